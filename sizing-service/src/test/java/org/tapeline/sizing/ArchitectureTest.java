package org.tapeline.sizing;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

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

/** Rules that match nothing fail: ArchUnit's default, which archunit.properties must not change. */
@AnalyzeClasses(
    packages = "org.tapeline.sizing",
    importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  private static final String SIZING = "org\\.tapeline\\.sizing\\.";
  private static final String UNITS = SIZING + "units\\..*";
  private static final String READING =
      SIZING + "reading\\.(Measurement|Reading|ReadingText|Unit)(\\$.*)?";
  private static final String CHART =
      SIZING
          + "chart\\.(ModelName|SizeChart|SizeRange|SizeWord|ChartUnit|ChartCsv|ChartPublished)(\\$.*)?";
  private static final String ADVICE =
      SIZING + "advice\\.(Adviser|ChartLookup|Hair|SizeAdvice|SizeChances)(\\$.*)?";
  private static final String GROWTH =
      SIZING + "growth\\.(Age|Lms|Sex|GrowthReference|HeadForAge)(\\$.*)?";
  private static final String STATISTICS = "org\\.apache\\.commons\\.statistics\\..*";
  private static final String MEASURER = SIZING + "measurer\\.(RepeatError|TapeBias)(\\$.*)?";
  private static final String OFFSET = SIZING + "offset\\.OffsetPosterior";
  private static final String DRAFT = SIZING + "draft\\.(SizeChange|Advised)";
  private static final String PLAYER =
      SIZING
          + "roster\\.(PlayerDecider|PlayerState|PlayerEvent|PlayerCommand|HeadDoubt|CorrectionReason)"
          + "(\\$.*)?";

  private static final Pattern PERSONAL =
      Pattern.compile(
          "(?i).*(name|birth|address|phone|mail|street|sex|comment|note$|text|guardian).*");

  @ArchTest static final ArchRule lengthsImportNothingButJava = coreOf(UNITS);

  @ArchTest static final ArchRule readingsImportLengths = coreOf(READING, UNITS);

  @ArchTest static final ArchRule chartsImportLengths = coreOf(CHART, UNITS);

  @ArchTest
  static final ArchRule adviceImportsChartsAndLengths =
      coreOf(ADVICE, CHART, OFFSET, UNITS, STATISTICS);

  @ArchTest
  static final ArchRule whatADraftChangesIsReckonedByTheAdviceItself =
      coreOf(DRAFT, ADVICE, CHART, OFFSET, UNITS);

  @ArchTest
  static final ArchRule growthImportsLengthsAndDistributions = coreOf(GROWTH, UNITS, STATISTICS);

  @ArchTest static final ArchRule measurersImportDistributions = coreOf(MEASURER, STATISTICS);

  @ArchTest static final ArchRule offsetsImportDistributions = coreOf(OFFSET, STATISTICS);

  @ArchTest
  static final ArchRule thePlayerImportsOnlyWhatIsPureItself =
      coreOf(PLAYER, READING, GROWTH, ADVICE, CHART, UNITS);

  @ArchTest
  static final ArchRule noEventCanHoldPersonalData =
      classes()
          .that()
          .haveNameMatching(SIZING + "(roster\\.PlayerEvent\\$.*|chart\\.ChartPublished(\\$.*)?)")
          .and()
          .areRecords()
          .should(haveNoComponentThatCouldHoldPersonalData());

  @ArchTest
  static final ArchRule nobodyReadsAnotherServicesCode =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.tapeline.fitting..", "org.tapeline.inventory..", "org.tapeline.notify..");

  @ArchTest
  static final ArchRule roomsAreNamedAfterFeatures =
      noClasses()
          .should()
          .resideInAnyPackage("..util..", "..common..", "..impl..", "..dto..", "..mapper..");

  private static ArchRule coreOf(String core, String... mayUse) {
    String allowed =
        "java\\..*|" + core + (mayUse.length == 0 ? "" : "|" + String.join("|", mayUse));
    return classes()
        .that()
        .haveNameMatching(core)
        .should()
        .onlyDependOnClassesThat(areNamed(allowed));
  }

  /** By the type itself or, for an array, by that of its elements; primitives are always fine. */
  private static DescribedPredicate<JavaClass> areNamed(String pattern) {
    return DescribedPredicate.describe(
        "are named " + pattern,
        type -> {
          JavaClass element = type.getBaseComponentType();
          return element.isPrimitive() || element.getName().matches(pattern);
        });
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
