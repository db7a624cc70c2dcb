package org.tapeline.fitting.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.protocol.Check;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.session.Decision.Accepted;
import org.tapeline.fitting.session.Decision.Refused;
import org.tapeline.fitting.session.FitSessionCommand.Abandon;
import org.tapeline.fitting.session.FitSessionCommand.Adjust;
import org.tapeline.fitting.session.FitSessionCommand.Fail;
import org.tapeline.fitting.session.FitSessionCommand.KnownHelmet;
import org.tapeline.fitting.session.FitSessionCommand.Open;
import org.tapeline.fitting.session.FitSessionCommand.Pass;
import org.tapeline.fitting.session.FitSessionCommand.RecordCheck;
import org.tapeline.fitting.session.FitSessionCommand.TryHelmet;
import org.tapeline.fitting.session.FitSessionEvent.AdvisedSize;
import org.tapeline.fitting.session.FitSessionEvent.Conditions;

/** A fit session in a test: goes on by commands that must be accepted, then is asked one thing. */
final class ASession {
  static final UUID SESSION = UUID.randomUUID();
  static final UUID PLAYER = UUID.randomUUID();
  static final Instant AT = Instant.parse("2026-08-01T15:06:00Z");
  static final String TAG = "LV0001";
  static final Conditions CONDITIONS =
      new Conditions(Optional.of(24.0), Optional.of(300.0), Optional.of("usual"));
  static final Open OPEN =
      new Open(
          SESSION,
          PLAYER,
          "NORTH",
          "U10-HAWKS",
          "fitter.north",
          List.of(new AdvisedSize("model-a", "youth-medium"), new AdvisedSize("model-b", "small")),
          AT);
  static final List<String> SIZES = List.of("youth-small", "youth-medium", "youth-large");

  private final Protocol protocol;
  private final List<FitSessionEvent> events = new ArrayList<>();
  private FitSession state = FitSession.NONE;

  private ASession(Protocol protocol) {
    this.protocol = protocol;
  }

  static ASession notOpened() {
    return new ASession(SmallProtocol.version(1));
  }

  static ASession opened() {
    return notOpened().with(OPEN);
  }

  static ASession openedWith(Protocol protocol) {
    return new ASession(protocol).with(OPEN);
  }

  static ASession helmetOn() {
    return opened().with(putOn(TAG));
  }

  static ASession allPassed() {
    return helmetOn().withAllPassed();
  }

  ASession with(FitSessionCommand command) {
    Decision decision = asked(command);
    assertThat(decision).as(command.toString()).isInstanceOf(Accepted.class);
    for (FitSessionEvent event : ((Accepted) decision).events()) {
      events.add(event);
      state = FitSessionEvolver.evolve(state, event);
    }
    return this;
  }

  ASession withAllPassed() {
    protocol.checks().stream().map(Check::id).forEach(id -> with(passed(id)));
    return this;
  }

  Decision asked(FitSessionCommand command) {
    return asked(command, protocol);
  }

  Decision asked(FitSessionCommand command, Protocol inForce) {
    return FitSessionDecider.decide(state, command, inForce);
  }

  FitSessionEvent event(FitSessionCommand command) {
    Decision decision = asked(command);
    assertThat(decision).isInstanceOf(Accepted.class);
    assertThat(((Accepted) decision).events()).hasSize(1);
    return ((Accepted) decision).events().getFirst();
  }

  String refusal(FitSessionCommand command) {
    return refusal(asked(command));
  }

  static String refusal(Decision decision) {
    assertThat(decision).isInstanceOf(Refused.class);
    assertThat(((Refused) decision).sentence()).isNotBlank();
    return ((Refused) decision).code();
  }

  static boolean tried(FitSession state, String check, String remedy) {
    return state.now().stream()
        .flatMap(work -> work.applied().stream())
        .anyMatch(a -> a.check().equals(check) && a.remedy().equals(remedy));
  }

  FitSession state() {
    return state;
  }

  List<FitSessionEvent> events() {
    return List.copyOf(events);
  }

  static KnownHelmet known(String tag) {
    return new KnownHelmet(tag, "model-a", "youth-medium", "NORTH", Optional.empty());
  }

  static TryHelmet putOn(String tag) {
    return new TryHelmet(tag, Optional.of(known(tag)), "youth-medium", AT);
  }

  static RecordCheck passed(String check) {
    return passed(check, AT);
  }

  static RecordCheck passed(String check, Instant at) {
    return new RecordCheck(check, true, Optional.empty(), Optional.empty(), Optional.empty(), at);
  }

  static RecordCheck failed(String check, String finding) {
    return new RecordCheck(
        check, false, Optional.empty(), Optional.of(finding), Optional.empty(), AT);
  }

  static Adjust adjust(String check, String remedy) {
    return new Adjust(check, remedy, Optional.empty(), AT);
  }

  static Pass pass() {
    return pass(Optional.of(known(TAG)));
  }

  static Pass pass(Optional<KnownHelmet> helmet) {
    return new Pass(helmet, List.of(), CONDITIONS, Optional.empty(), AT);
  }

  static Fail fail(Need... needs) {
    return new Fail(List.of(needs), here(SIZES), AT);
  }

  static Here here(List<String> sizes) {
    return new Here(
        Map.of(), List.of(), Map.of("model-a", sizes), OPEN.advised(), Optional.empty());
  }

  static Abandon abandon(String why) {
    return new Abandon(why, AT);
  }
}
