package org.tapeline.notify;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.tapeline.testkit.Cores.areNamed;
import static org.tapeline.testkit.Cores.haveNoComponentLike;
import static org.tapeline.testkit.Cores.readNoRowsAsStream;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.regex.Pattern;
import org.tapeline.notify.help.HelpAnswered;
import org.tapeline.notify.help.HelpAsked;
import org.tapeline.notify.notice.NoticeEvent;
import org.tapeline.notify.optout.OptedIn;
import org.tapeline.notify.optout.OptedOut;
import org.tapeline.notify.wish.WishesSet;

@AnalyzeClasses(
    packages = "org.tapeline.notify",
    importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  private static final Pattern PERSONAL =
      Pattern.compile(
          "(?i).*(name|birth|address|phone|mail|street|text|subject|note$|comment|detail).*");

  private static final String NOTICE_CORE =
      "org\\.tapeline\\.notify\\.notice\\."
          + "(Notice|Notice\\$.*|NoticeEvent|NoticeRaised|NoticeSent|NoticeMovedOn|NoticeUndeliverable"
          + "|NoticeAcknowledged|NoticeCancelled|NoticeCommand.*|NoticeDecider.*|Decision.*"
          + "|NoticeKind.*|Urgency|Cover|NoticeCovers\\$Covered|CauseName.*|CauseRule|CauseTable|WhyUndeliverable|NoticeOfCase|Overtaking|Way|Way\\$.*"
          + "|NoticeEscalated|PersonReached|ReachedBy|EscalationStep)";
  private static final String CAUSE_CORE =
      "org\\.tapeline\\.notify\\.cause\\."
          + "(RefitCase|RefitCase\\$.*|Refit(Opened|Booked|Unbooked|Closed)|Step.*|ToldSoFar"
          + "|Fit|Fit\\$.*|FitWords.*|Household|WhenFitIsDueThenTellGuardian"
          + "|WhenRefitCaseMovesThenTellGuardian|Piece)";
  private static final String WORDS_CORE =
      "org\\.tapeline\\.notify\\.words\\."
          + "(Facts|Language.*|Letter|Letter\\$.*|Moments|Phrases|Sentence|Template|TradeWords"
          + "|Words|WordsFile|NameList|ReadingGrade|TextCounts|Perspicuity|SpanishSyllables"
          + "|SampleFacts|Recall|Translation)";
  private static final String OTHER_CORE =
      "org\\.tapeline\\.notify\\.(channel\\.(BackOff|SendOutcome.*|ChannelPlan|ChannelPolicy|ChannelPolicy\\$.*)"
          + "|text\\.(Gsm|Signatures|MessageKey|GatewayAnswers)|optout\\.Opted(Out|In)"
          + "|wish\\.(QuietHours|Wish|Wish\\$.*|WishesSet|WishForm)|help\\.Help(Asked|Answered)"
          + "|staff\\.WhenRestockRequestedThenTellDepot"
          + "|escalation\\.(Happened|Escalation|Escalation\\$.*|EscalationPolicy"
          + "|EscalationPolicy\\$.*)|digest\\.DigestHour|retention\\.(RetentionPolicy|Keeping))";

  @ArchTest
  static final ArchRule theNoticeImportsNothingButJava =
      classes()
          .that()
          .haveNameMatching(NOTICE_CORE)
          .should()
          .onlyDependOnClassesThat(areNamed("java\\..*|" + NOTICE_CORE));

  @ArchTest
  static final ArchRule whatACaseLeadsToImportsNothingButJavaAndTheNotice =
      classes()
          .that()
          .haveNameMatching(CAUSE_CORE)
          .should()
          .onlyDependOnClassesThat(areNamed("java\\..*|" + CAUSE_CORE + "|" + NOTICE_CORE));

  @ArchTest
  static final ArchRule theWordsImportNothingButJava =
      classes()
          .that()
          .haveNameMatching(WORDS_CORE)
          .should()
          .onlyDependOnClassesThat(areNamed("java\\..*|" + WORDS_CORE));

  @ArchTest
  static final ArchRule linksAndRulesImportNothingButJava =
      classes()
          .that()
          .haveNameMatching(OTHER_CORE)
          .should()
          .onlyDependOnClassesThat(areNamed("javax?\\..*|" + OTHER_CORE + "|" + NOTICE_CORE));

  @ArchTest
  static final ArchRule noEventCanHoldPersonalData =
      classes()
          .that()
          .areRecords()
          .and(
              DescribedPredicate.or(
                  assignableTo(NoticeEvent.class),
                  assignableTo(OptedOut.class),
                  assignableTo(OptedIn.class),
                  assignableTo(WishesSet.class),
                  assignableTo(HelpAsked.class),
                  assignableTo(HelpAnswered.class)))
          .should(haveNoComponentLike(PERSONAL));

  @ArchTest
  static final ArchRule featuresDoNotGoInCircles =
      slices().matching("org.tapeline.notify.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule nobodyReadsAnotherServicesCode =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "org.tapeline.sizing..", "org.tapeline.fitting..", "org.tapeline.inventory..");

  @ArchTest static final ArchRule rowsAreReadAtOnce = readNoRowsAsStream();
}
