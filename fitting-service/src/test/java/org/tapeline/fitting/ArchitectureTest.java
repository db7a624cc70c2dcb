package org.tapeline.fitting;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.tapeline.testkit.Cores.coreOf;
import static org.tapeline.testkit.Cores.haveNoComponentLike;
import static org.tapeline.testkit.Cores.readNoRowsAsStream;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.regex.Pattern;

/** Rules that match nothing fail: ArchUnit's default, which archunit.properties must not change. */
@AnalyzeClasses(
    packages = "org.tapeline.fitting",
    importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  private static final String OURS = "org\\.tapeline\\.fitting\\.";
  private static final String PROTOCOL =
      OURS + "protocol\\.(Protocol|Check|Remedy|Otherwise|Measure|Fittings)(\\$.*)?";
  private static final String NEED = OURS + "session\\.Need(\\$.*)?";
  private static final String WEAR = OURS + "signoff\\.WearState";
  private static final String PLAN =
      OURS + "recheck\\.(RecheckPlan|RecheckRules|Trigger|Air|AirWords)(\\$.*)?";
  private static final Pattern PERSONAL =
      Pattern.compile(
          "(?i).*(name|birth|address|phone|mail|street|sex|comment|note$|text|guardian).*");

  @ArchTest
  static final ArchRule theFitSessionIsPure =
      coreOf(
          OURS
              + "session\\.(FitSession|FitSessionEvent|FitSessionCommand|FitSessionDecider"
              + "|FitSessionEvolver|CheckRules|AdjustRules|PassOverRules|CorrectionRules|HelmetRules"
              + "|ResultRules|Decision|Need|Needs|Parts|Here|Proposal|RemedyEngine|RemediesLeft"
              + "|HelmetMoves|EnteredAt)(\\$.*)?",
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
  static final ArchRule theDaysOrderIsPure =
      coreOf(OURS + "today\\.(DayOrder|RecheckEvent)(\\$.*)?", PLAN, WEAR);

  @ArchTest
  static final ArchRule theConcussionIsPure =
      coreOf(OURS + "concussion\\.Concussion(Event|Command|Decision|Decider)(\\$.*)?");

  @ArchTest
  static final ArchRule theCausesOfRechecksArePure =
      coreOf(OURS + "recheck\\.(RecheckCauseEvent|TypedTemperature)(\\$.*)?");

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
              + "|FitDaySlots|Booking|ReachableSlot|SlotRef|Opening|OpenSlot|SlotSeeker|Stay|TravelTimes|TakenPlace"
              + "|BookingWeights|BookingCost|BookingPlan|HouseholdSeats|MovedDay|FitLengths"
              + "|FitMinutes)(\\$.*)?");

  @ArchTest
  static final ArchRule theWordsOfAChoiceArePure =
      coreOf(OURS + "choice\\.(ChoiceLanguage|ChoiceWords)(\\$.*)?");

  @ArchTest
  static final ArchRule theEvidenceIsPure =
      coreOf(
          OURS + "evidence\\.(Evidence|Fingerprint|PastSignOff|Standing)(\\$.*)?",
          OURS + "session\\.FitSessionEvent(\\$.*)?",
          OURS + "signoff\\.(SignOffEvent|WearState)(\\$.*)?");

  @ArchTest
  static final ArchRule everyDeciderAndRuleIsInACore =
      classes()
          .that()
          .haveNameMatching(OURS + ".*(Decider|Evolver|Rules)")
          .should()
          .haveNameMatching(
              OURS
                  + "(session\\.(FitSessionDecider|FitSessionEvolver|CheckRules|AdjustRules"
                  + "|PassOverRules|CorrectionRules|HelmetRules|ResultRules)"
                  + "|concussion\\.ConcussionDecider|recheck\\.RecheckRules"
                  + "|signoff\\.(SignOffDecider|WearRules)"
                  + "|refit\\.(RefitDecider|RefitRules)|fitday\\.FitDayDecider)");

  @ArchTest
  static final ArchRule noEventCanHoldPersonalData =
      classes()
          .that()
          .haveNameMatching(OURS + ".*Event\\$.*|" + NEED)
          .and()
          .areRecords()
          .should(haveNoComponentLike(PERSONAL));

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

  @ArchTest static final ArchRule rowsAreReadAtOnce = readNoRowsAsStream();

  @ArchTest
  static final ArchRule roomsAreNamedAfterFeatures =
      noClasses()
          .should()
          .resideInAnyPackage("..util..", "..common..", "..impl..", "..dto..", "..mapper..");
}
