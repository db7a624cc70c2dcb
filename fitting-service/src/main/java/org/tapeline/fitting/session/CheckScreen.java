package org.tapeline.fitting.session;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.tapeline.fitting.protocol.Check;
import org.tapeline.fitting.protocol.Measure;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.protocol.Remedy;
import org.tapeline.fitting.roster.Words;

/**
 * The check at hand.
 *
 * @param finding what was found wrong, in words; empty for a check that did not fail
 * @param attempts what can be tried, the proposed one first
 * @param next what is to be done when nothing is left to try, in words
 * @param number its place in the protocol, from 1
 */
record CheckScreen(
    Check check, boolean failed, String finding, List<Attempt> attempts, Next next, int number) {

  /** A remedy that can be tried. */
  record Attempt(Remedy remedy, Optional<String> part, boolean onRecord) {
    public String id() {
      return remedy.id();
    }

    public String said() {
      return remedy.text() + part.map(p -> " (" + Words.item(p) + ")").orElse("");
    }

    public String partSaid() {
      return part.map(Words::item).orElse("");
    }

    public String item() {
      return part.orElse("");
    }

    public List<Remedy.Care> care() {
      return remedy.care();
    }
  }

  /**
   * What is to be done after the last remedy.
   *
   * @param step {@code helmet} or {@code fail}: the screen that it leads to
   */
  record Next(String said, String step, boolean measure) {}

  /** A button for "looks right now" makes no sense where only a remedy helps. */
  public boolean mayPass() {
    return !failed || !check.standsUntilMended();
  }

  public boolean helmetUnsafe() {
    return failed && check.standsUntilMended();
  }

  public Measure measure() {
    return check.measure().orElse(null);
  }

  /**
   * @param here asked for only when the check failed
   */
  static CheckScreen of(FitSession session, Check check, Protocol protocol, Supplier<Here> here) {
    int number = protocol.checks().indexOf(check) + 1;
    if (!session.failed(check.id())) {
      return new CheckScreen(check, false, "", List.of(), NOTHING, number);
    }
    Here there = here.get();
    return new CheckScreen(
        check,
        true,
        check.way(session.finding(check.id())).map(Check.Way::said).orElse(""),
        RemedyEngine.remedies(session, check, protocol, there).stream()
            .map(t -> new Attempt(check.remedy(t.remedy()).get(), t.item(), t.onRecord()))
            .toList(),
        next(RemedyEngine.next(session, protocol, there)),
        number);
  }

  private static Next next(Proposal proposal) {
    return switch (proposal) {
      case Proposal.PutOn p ->
          new Next(
              "Put on another helmet: "
                  + Words.model(p.model())
                  + " "
                  + Words.size(p.size())
                  + ", here is "
                  + p.tags().getFirst()
                  + ".",
              "helmet",
              false);
      case Proposal.MeasureAgain p ->
          new Next(
              "The head asks for another size than was measured. Measure it again before another"
                  + " helmet is taken.",
              "fail",
              true);
      case Proposal.EndWithoutFit p ->
          new Next(
              "No fit can be reached here. The re-fit needs "
                  + String.join(", ", p.needs().stream().map(CheckScreen::said).toList())
                  + ".",
              "fail",
              false);
      case Proposal.Nothing p -> NOTHING;
      case Proposal.Resume p -> NOTHING;
      case Proposal.Look p -> NOTHING;
      case Proposal.Try p -> NOTHING;
      case Proposal.SignOff p -> NOTHING;
    };
  }

  private static final Next NOTHING = new Next("", "fail", false);

  static String said(Need need) {
    return need.needsHelmet()
        ? Words.model(need.model().get()) + " " + Words.size(need.size().get())
        : Words.item(need.item().get());
  }
}
