package org.tapeline.fitting;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Rules that match nothing fail: ArchUnit's default, which archunit.properties must not change. */
@AnalyzeClasses(
    packages = "org.tapeline.fitting",
    importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  private static final String OURS = "org\\.tapeline\\.fitting\\.";
  private static final String PROTOCOL =
      OURS + "protocol\\.(Protocol|Check|Remedy|Otherwise)(\\$.*)?";
  private static final String NEED = OURS + "session\\.Need(\\$.*)?";
  private static final String PLAN = OURS + "recheck\\.RecheckPlan(\\$.*)?";
  private static final Pattern PERSONAL =
      Pattern.compile(
          "(?i).*(name|birth|address|phone|mail|street|sex|comment|note$|text|guardian).*");

  @ArchTest
  static final ArchRule theFitSessionIsPure =
      coreOf(
          OURS
              + "session\\.(FitSession|FitSessionEvent|FitSessionCommand|FitSessionDecider"
              + "|FitSessionEvolver|CheckRules|HelmetRules|ResultRules|Decision|Need|Needs|Parts)"
              + "(\\$.*)?",
          PROTOCOL);

  @ArchTest static final ArchRule theProtocolIsPure = coreOf(PROTOCOL);

  @ArchTest
  static final ArchRule theSignOffIsPure =
      coreOf(
          OURS
              + "signoff\\.(SignOff|SignOffEvent|SignOffCommand|SignOffDecider|WearRules|WearState)"
              + "(\\$.*)?",
          PLAN);

  @ArchTest static final ArchRule theRecheckPlanIsPure = coreOf(PLAN);

  @ArchTest
  static final ArchRule theRefitIsPure =
      coreOf(
          OURS + "refit\\.(RefitCase|RefitEvent|RefitCommand|RefitDecider|RefitRules)(\\$.*)?",
          NEED);

  @ArchTest
  static final ArchRule theFitDayIsPure =
      coreOf(
          OURS
              + "fitday\\.(FitDay|FitDayEvent|FitDayCommand|FitDayDecider|FitDayDecision"
              + "|FitDaySlots|Booking)(\\$.*)?");

  @ArchTest
  static final ArchRule everyDeciderAndRuleIsInACore =
      classes()
          .that()
          .haveNameMatching(OURS + ".*(Decider|Evolver|Rules)")
          .should()
          .haveNameMatching(
              OURS
                  + "(session\\.(FitSessionDecider|FitSessionEvolver|CheckRules|HelmetRules"
                  + "|ResultRules)|signoff\\.(SignOffDecider|WearRules)"
                  + "|refit\\.(RefitDecider|RefitRules)|fitday\\.FitDayDecider)");

  @ArchTest
  static final ArchRule noEventCanHoldPersonalData =
      classes()
          .that()
          .haveNameMatching(OURS + ".*Event\\$.*|" + NEED)
          .and()
          .areRecords()
          .should(haveNoComponentThatCouldHoldPersonalData());

  @ArchTest
  static final ArchRule reactionsSayWhenAndThen =
      classes()
          .that()
          .haveSimpleNameStartingWith("When")
          .and()
          .areTopLevelClasses()
          .should()
          .haveNameMatching(".*\\.When[A-Za-z]+Then[A-Za-z]+");

  @ArchTest
  static final ArchRule nobodyReadsAnotherServicesCode =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.tapeline.inventory..", "org.tapeline.sizing..", "org.tapeline.notify..");

  @ArchTest
  static final ArchRule roomsDoNotGoRoundInCircles =
      slices().matching("org.tapeline.fitting.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule roomsAreNamedAfterFeatures =
      noClasses()
          .should()
          .resideInAnyPackage("..util..", "..common..", "..impl..", "..dto..", "..mapper..");

  /**
   * @param neighbour names of another feature's core that this one may know
   */
  private static ArchRule coreOf(String core, String... neighbour) {
    String allowed =
        Stream.concat(Stream.of("java\\..*", core), Stream.of(neighbour))
            .collect(Collectors.joining("|"));
    return classes()
        .that()
        .haveNameMatching(core)
        .should()
        .onlyDependOnClassesThat(
            DescribedPredicate.describe(
                "are named " + allowed,
                (JavaClass type) ->
                    type.getBaseComponentType().isPrimitive()
                        || type.getBaseComponentType().getName().matches(allowed)));
  }

  private static ArchCondition<JavaClass> haveNoComponentThatCouldHoldPersonalData() {
    return new ArchCondition<>("have no component that could hold personal data") {
      @Override
      public void check(JavaClass event, ConditionEvents events) {
        event
            .getFields()
            .forEach(
                field -> {
                  boolean personal =
                      PERSONAL.matcher(field.getName()).matches()
                          || PERSONAL.matcher(field.getRawType().getSimpleName()).matches();
                  events.add(new SimpleConditionEvent(field, !personal, field.getFullName()));
                });
      }
    };
  }
}
