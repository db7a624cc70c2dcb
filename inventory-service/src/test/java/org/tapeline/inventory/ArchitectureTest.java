package org.tapeline.inventory;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
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
    packages = "org.tapeline.inventory",
    importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  private static final String OURS = "org\\.tapeline\\.inventory\\.";
  private static final Pattern PERSONAL =
      Pattern.compile(
          "(?i).*(name|birth|address|phone|mail|street|sex|comment|note$|text|guardian).*");

  @ArchTest
  static final ArchRule theHelmetIsPure =
      coreOf(
          OURS
              + "helmet\\.(AssetTag|TagText|NearTags|Helmet|HelmetEvent|HelmetCommand|HelmetDecider|OutOfUse|Lifecycle|Instead|Decision"
              + "|HelmetFit)(\\$.*)?");

  @ArchTest
  static final ArchRule theHelmetPolicyIsPure = coreOf(OURS + "policy\\.HelmetPolicy(\\$.*)?");

  @ArchTest
  static final ArchRule theRestockRulesArePure = coreOf(OURS + "restock\\.Restock(\\$.*)?");

  @ArchTest
  static final ArchRule theDamageRulesArePure =
      coreOf(OURS + "damage\\.(DamageRules|InspectionPolicy|Inspection|Turn|Photo)(\\$.*)?");

  @ArchTest
  static final ArchRule theLedgerIsPure =
      coreOf(OURS + "stock\\.(Move|StockEvent|Shelf|Balances|StockPolicy|CountSheet)" + "(\\$.*)?");

  @ArchTest
  static final ArchRule theCompatibilityOfPartsIsPure =
      coreOf(OURS + "compat\\.PartCompatibility(\\$.*)?");

  @ArchTest
  static final ArchRule theSheetsOfLabelsArePure =
      coreOf(OURS + "label\\.(LabelSheet|Label|PlacedLabel)(\\$.*)?");

  @ArchTest
  static final ArchRule whatAHoldConcernsIsPure =
      coreOf(OURS + "hold\\.(HoldCriteria|HoldEvent|HoldPreview)(\\$.*)?");

  /**
   * Charts may use the libraries that draw them, and nothing that knows where the numbers come
   * from.
   */
  @ArchTest
  static final ArchRule chartsAreDrawnFromRecords =
      classes()
          .that()
          .resideInAPackage("..inventory.chart..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "java..",
              "javax.xml..",
              "org.w3c.dom..",
              "org.jfree..",
              "org.apache.batik.svggen..",
              "..inventory.chart..");

  @ArchTest
  static final ArchRule theDemandIsPure =
      coreOf(
          OURS
              + "demand\\.(DemandCount|DemandRate|LeadTime|Horizon|StockLevels|SeasonStock"
              + "|EconomicLot|Budget)(\\$.*)?",
          "org\\.apache\\.commons\\.statistics\\..*");

  @ArchTest
  static final ArchRule theNeedIsPure =
      coreOf(OURS + "reservation\\.(Need|ReservationEvent|Candidate|SearchWeights)(\\$.*)?");

  @ArchTest
  static final ArchRule theAllocationIsPure =
      coreOf(
          OURS
              + "allocation\\.(FlowNetwork|FlowSolver|OptimalityProof|Kind|Seeker|FreeHelmet|Ways"
              + "|AllocationPolicy|Situation|Grouping|AllocationNetwork|Allocation|Allotment"
              + "|Accepts|ShelfSupply|Plan|PlanLine|PlanWish|PlanEvent|Reason|Reasons)(\\$.*)?",
          OURS + "helmet\\.Words");

  @ArchTest
  static final ArchRule theReconditioningRulesArePure =
      coreOf(
          OURS
              + "reconditioning\\.(Season|ReconditioningPolicy|FleetHelmet|HelmetRules|Standing"
              + "|DueRules|Needs|NeedRules|BatchPlan|Spare|PlanWords|Batch|BatchEvent|BatchCommand"
              + "|BatchDecider|Outcome|Money)"
              + "(\\$.*)?");

  @ArchTest
  static final ArchRule theOutlookIsPure =
      coreOf(
          OURS
              + "outlook\\.(OutlookPolicy|BetaBinomial|Cohort|SizeNeed|Band|Draws|Outlook)(\\$.*)?");

  /** The name of a place is that of a field or a depot, and stands apart in PlaceListed. */
  @ArchTest
  static final ArchRule noEventCanHoldPersonalData =
      classes()
          .that()
          .haveNameMatching(OURS + ".*Event\\$.*")
          .and()
          .areRecords()
          .should(haveNoComponentLike(PERSONAL));

  @ArchTest
  static final ArchRule nobodyReadsAnotherServicesCode =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.tapeline.fitting..", "org.tapeline.sizing..", "org.tapeline.notify..");

  @ArchTest static final ArchRule rowsAreReadAtOnce = readNoRowsAsStream();

  @ArchTest
  static final ArchRule roomsAreNamedAfterFeatures =
      noClasses()
          .should()
          .resideInAnyPackage("..util..", "..common..", "..impl..", "..dto..", "..mapper..");
}
