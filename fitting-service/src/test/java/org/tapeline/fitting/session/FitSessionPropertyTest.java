package org.tapeline.fitting.session;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.statistics.Statistics;
import org.tapeline.fitting.protocol.Check;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.protocol.Remedy;
import org.tapeline.fitting.session.Decision.Accepted;
import org.tapeline.fitting.session.FitSessionCommand.Adjust;
import org.tapeline.fitting.session.FitSessionEvent.AdjustmentMade;
import org.tapeline.fitting.session.FitSessionEvent.CheckRecorded;
import org.tapeline.fitting.session.FitSessionEvent.FitPassed;
import org.tapeline.fitting.session.FitSessionEvent.HelmetTried;
import org.tapeline.journal.EventJson;

/** Whatever a fitter does, in whichever order. */
class FitSessionPropertyTest {
  private static final Protocol PROTOCOL = SmallProtocol.version(1);
  private static final List<String> CHECKS = PROTOCOL.checks().stream().map(Check::id).toList();

  @Property
  void aPassNeedsEveryCheckSinceTheLastChangeThatTouchedIt(
      @ForAll("work") List<FitSessionCommand> work) {
    List<FitSessionEvent> events = eventsOf(work);
    boolean passed = !events.isEmpty() && events.getLast() instanceof FitPassed;
    Statistics.label("passed").collect(passed);
    Statistics.label("passed")
        .coverage(seen -> seen.check(true).percentage(share -> share > 5 && share < 95));
    if (passed) {
      assertThat(passedSinceTouched(events)).containsExactlyInAnyOrderElementsOf(CHECKS);
    }
    assertThat(events.stream().filter(FitPassed.class::isInstance).count()).isLessThanOrEqualTo(1);
  }

  @Property
  void aHelmetAtFaultIsNotPassedWithoutARemedy(@ForAll("work") List<FitSessionCommand> work) {
    Set<String> atFault = new HashSet<>();
    String onHead = "";
    for (FitSessionEvent event : eventsOf(work)) {
      if (event instanceof HelmetTried tried) {
        onHead = tried.tag();
      } else if (event instanceof CheckRecorded answer && answer.check().equals("screws")) {
        if (answer.result().equals("fail")) {
          atFault.add(onHead);
        } else {
          assertThat(atFault).doesNotContain(onHead);
        }
      } else if (event instanceof AdjustmentMade made && touched(made).contains("screws")) {
        atFault.remove(onHead);
      } else if (event instanceof FitPassed passed) {
        assertThat(atFault).doesNotContain(passed.tag());
      }
    }
  }

  @Property
  void eventsThatWereWrittenAndReadTellTheSameState(@ForAll("work") List<FitSessionCommand> work)
      throws JsonProcessingException {
    ASession session = ASession.opened();
    List<FitSessionEvent> read = new ArrayList<>();
    work.stream().filter(c -> session.asked(c) instanceof Accepted).forEach(session::with);
    for (FitSessionEvent event : session.events()) {
      String json = EventJson.MAPPER.writeValueAsString(event);
      read.add(EventJson.MAPPER.readValue(json, event.getClass()));
    }
    assertThat(read).isEqualTo(session.events());
    assertThat(FitSessionEvolver.fold(read)).isEqualTo(session.state());
  }

  private static List<FitSessionEvent> eventsOf(List<FitSessionCommand> work) {
    ASession session = ASession.opened();
    for (FitSessionCommand command : work) {
      if (session.asked(command) instanceof Accepted) {
        session.with(command);
      }
    }
    return session.events();
  }

  /** Told from the events and the protocol alone, without the state that the rules go by. */
  private static Set<String> passedSinceTouched(List<FitSessionEvent> events) {
    Set<String> passed = new HashSet<>();
    for (FitSessionEvent event : events) {
      if (event instanceof HelmetTried) {
        passed.clear();
      } else if (event instanceof CheckRecorded answer && answer.result().equals("pass")) {
        passed.add(answer.check());
      } else if (event instanceof CheckRecorded answer) {
        passed.remove(answer.check());
      } else if (event instanceof AdjustmentMade made) {
        passed.removeAll(touched(made));
      }
    }
    return passed;
  }

  private static Set<String> touched(AdjustmentMade made) {
    Remedy remedy = PROTOCOL.check(made.check()).orElseThrow().remedy(made.remedy()).orElseThrow();
    Set<String> all = new HashSet<>(remedy.voids());
    all.add(made.check());
    return all;
  }

  /**
   * Single steps, and between them what a fitter does in one go: all checks passed, one check
   * failed and mended. By chance alone few sequences would come near a pass.
   */
  @Provide
  Arbitrary<List<FitSessionCommand>> work() {
    return Arbitraries.frequencyOf(
            Tuple.of(3, Arbitraries.just(CHECKS.stream().map(ASession::passed).toList())),
            Tuple.of(3, Arbitraries.of(mended())),
            Tuple.of(3, Arbitraries.just(List.of(ASession.pass()))),
            Tuple.of(6, step().map(List::of)))
        .list()
        .ofMaxSize(20)
        .map(
            parts ->
                Stream.concat(
                        Stream.of(ASession.putOn("LV0001")), parts.stream().flatMap(List::stream))
                    .toList());
  }

  private static List<List<? extends FitSessionCommand>> mended() {
    List<List<? extends FitSessionCommand>> all = new ArrayList<>();
    for (Adjust remedy : remedies()) {
      all.add(
          List.of(
              ASession.failed(remedy.check(), "loose"), remedy, ASession.passed(remedy.check())));
    }
    return all;
  }

  private static List<Adjust> remedies() {
    return PROTOCOL.checks().stream()
        .flatMap(c -> c.remedies("").stream().map(r -> ASession.adjust(c.id(), r.id())))
        .toList();
  }

  private static Arbitrary<FitSessionCommand> step() {
    Arbitrary<String> check = Arbitraries.of(CHECKS);
    return Arbitraries.frequencyOf(
        Tuple.of(4, Arbitraries.of("LV0001", "LV0002").map(ASession::putOn)),
        Tuple.of(6, check.map(ASession::passed)),
        Tuple.of(4, check.map(id -> ASession.failed(id, "loose"))),
        Tuple.of(4, Arbitraries.of(remedies())),
        Tuple.of(1, Arbitraries.of(ASession.abandon("weather"), ASession.fail())));
  }
}
