package org.tapeline.sizing;

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
          .should(haveNoComponentLike(PERSONAL));

  @ArchTest
  static final ArchRule nobodyReadsAnotherServicesCode =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.tapeline.fitting..", "org.tapeline.inventory..", "org.tapeline.notify..");

  @ArchTest static final ArchRule rowsAreReadAtOnce = readNoRowsAsStream();

  @ArchTest
  static final ArchRule roomsAreNamedAfterFeatures =
      noClasses()
          .should()
          .resideInAnyPackage("..util..", "..common..", "..impl..", "..dto..", "..mapper..");
}
