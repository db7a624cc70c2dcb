package org.tapeline.fitting.session;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
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

  /** Whole rounds of passed checks between single steps, so that many sequences come to a pass. */
  @Provide
  Arbitrary<List<FitSessionCommand>> work() {
    Arbitrary<List<FitSessionCommand>> round =
        Arbitraries.just(
            CHECKS.stream().map(id -> (FitSessionCommand) ASession.passed(id)).toList());
    return Arbitraries.frequencyOf(Tuple.of(1, round), Tuple.of(5, step().map(List::of)))
        .list()
        .ofMaxSize(30)
        .map(parts -> parts.stream().flatMap(List::stream).toList());
  }

  private static Arbitrary<FitSessionCommand> step() {
    Arbitrary<String> check = Arbitraries.of(CHECKS);
    List<FitSessionCommand> remedies =
        PROTOCOL.checks().stream()
            .flatMap(
                c ->
                    c.ways().stream()
                        .flatMap(w -> w.remedies().stream())
                        .map(r -> (FitSessionCommand) ASession.adjust(c.id(), r.id())))
            .toList();
    return Arbitraries.frequencyOf(
        Tuple.of(4, Arbitraries.of("LV0001", "LV0002").map(ASession::putOn)),
        Tuple.of(6, check.map(ASession::passed)),
        Tuple.of(4, check.map(id -> ASession.failed(id, "loose"))),
        Tuple.of(4, Arbitraries.of(remedies)),
        Tuple.of(3, Arbitraries.of(ASession.pass())),
        Tuple.of(1, Arbitraries.of(ASession.abandon("weather"), ASession.fail())));
  }
}
