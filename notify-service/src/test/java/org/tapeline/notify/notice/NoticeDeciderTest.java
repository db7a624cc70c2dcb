package org.tapeline.notify.notice;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A notice")
class NoticeDeciderTest {
  private static final UUID ID = UUID.fromString("018f3c5e-7a10-7c3d-8a55-2f0e9b1c7d21");
  private static final String ROSA = "018f3c5e-7a10-7c3d-8a55-2f0e9b1c7d22";
  private static final Instant NOW = Instant.parse("2025-09-12T17:04:05Z");

  private static final NoticeRaised RAISED =
      new NoticeRaised(
          ID,
          ROSA,
          "do-not-wear-refit",
          "do-not-wear",
          List.of(),
          List.of(ID),
          null,
          "do-not-wear-undated",
          1,
          "en",
          NOW);
  private static final NoticeSent SENT = new NoticeSent(ID, ROSA, "mail", 1, NOW);
  private static final NoticeUndeliverable GIVEN_UP =
      new NoticeUndeliverable(ID, ROSA, "mail", "address-refused", NOW);
  private static final NoticeAcknowledged READ = new NoticeAcknowledged(ID, ROSA, NOW);
  private static final NoticeCancelled CANCELLED =
      new NoticeCancelled(ID, ROSA, "case-closed", NOW);

  private static final NoticeCommand RAISE = new NoticeCommand.Raise(RAISED);
  private static final NoticeCommand NOTE_SENT = new NoticeCommand.NoteSent("mail", 1, NOW);
  private static final NoticeCommand GIVE_UP =
      new NoticeCommand.GiveUp("mail", WhyUndeliverable.ADDRESS_REFUSED, NOW);
  private static final NoticeCommand ACKNOWLEDGE = new NoticeCommand.Acknowledge(NOW);
  private static final NoticeCommand CANCEL = new NoticeCommand.Cancel("case-closed", NOW);

  private static Notice given(NoticeEvent... events) {
    Notice state = Notice.none();
    for (NoticeEvent event : events) {
      state = NoticeDecider.evolve(state, event);
    }
    return state;
  }

  private static void leadsTo(Notice given, NoticeCommand when, NoticeEvent... then) {
    assertThat(NoticeDecider.decide(given, when)).isEqualTo(Decision.accepted(then));
  }

  private static void isRefused(Notice given, NoticeCommand when, String code) {
    assertThat(NoticeDecider.decide(given, when))
        .isInstanceOfSatisfying(
            Decision.Refused.class, refused -> assertThat(refused.code()).isEqualTo(code));
  }

  @Test
  @DisplayName("is raised once, however often it is asked for")
  void raisedOnce() {
    leadsTo(given(), RAISE, RAISED);
    leadsTo(given(RAISED), RAISE);
    leadsTo(given(RAISED, SENT), RAISE);
    leadsTo(given(RAISED, GIVEN_UP), RAISE);
    leadsTo(given(RAISED, SENT, READ), RAISE);
    leadsTo(given(RAISED, CANCELLED), RAISE);
  }

  @Test
  @DisplayName("that was never raised can do nothing else")
  void nothingBeforeItIsRaised() {
    isRefused(given(), NOTE_SENT, "no-such-notice");
    isRefused(given(), GIVE_UP, "no-such-notice");
    isRefused(given(), ACKNOWLEDGE, "no-such-notice");
    isRefused(given(), CANCEL, "no-such-notice");
  }

  @Test
  @DisplayName("is sent once")
  void sentOnce() {
    leadsTo(given(RAISED), NOTE_SENT, SENT);
    leadsTo(given(RAISED, SENT), NOTE_SENT);
    leadsTo(given(RAISED, READ), NOTE_SENT);
  }

  @Test
  @DisplayName("is given up only before it is sent")
  void givenUp() {
    leadsTo(given(RAISED), GIVE_UP, GIVEN_UP);
    leadsTo(given(RAISED, GIVEN_UP), GIVE_UP);
    isRefused(given(RAISED, SENT), GIVE_UP, "already-sent");
    isRefused(given(RAISED, READ), GIVE_UP, "already-sent");
    isRefused(given(RAISED, GIVEN_UP), NOTE_SENT, "given-up");
    isRefused(given(RAISED, GIVEN_UP), CANCEL, "given-up");
  }

  @Test
  @DisplayName("can be confirmed as read by whoever holds its link, once")
  void readOnce() {
    leadsTo(given(RAISED, SENT), ACKNOWLEDGE, READ);
    leadsTo(given(RAISED, SENT, READ), ACKNOWLEDGE);
    leadsTo(given(RAISED, GIVEN_UP), ACKNOWLEDGE, READ);
  }

  @Test
  @DisplayName("that was read counts as arrived, although the server's answer was lost")
  void readBeforeItIsKnownToBeSent() {
    leadsTo(given(RAISED), ACKNOWLEDGE, READ);
  }

  @Test
  @DisplayName("is cancelled only before it is sent")
  void cancelled() {
    leadsTo(given(RAISED), CANCEL, CANCELLED);
    leadsTo(given(RAISED, CANCELLED), CANCEL);
    isRefused(given(RAISED, SENT), CANCEL, "already-sent");
    isRefused(given(RAISED, READ), CANCEL, "already-sent");
  }

  @Test
  @DisplayName("that was cancelled means nothing any more")
  void nothingAfterItWasCancelled() {
    isRefused(given(RAISED, CANCELLED), NOTE_SENT, "cancelled");
    isRefused(given(RAISED, CANCELLED), GIVE_UP, "cancelled");
    isRefused(given(RAISED, CANCELLED), ACKNOWLEDGE, "cancelled");
  }

  @Test
  @DisplayName("says its state in one word")
  void words() {
    assertThat(given().code()).isEqualTo("none");
    assertThat(given(RAISED).code()).isEqualTo("raised");
    assertThat(given(RAISED, SENT).code()).isEqualTo("sent");
    assertThat(given(RAISED, GIVEN_UP).code()).isEqualTo("undeliverable");
    assertThat(given(RAISED, READ).code()).isEqualTo("acknowledged");
    assertThat(given(RAISED, CANCELLED).code()).isEqualTo("cancelled");
  }

  private static NoticeCommand exhaust(String... next) {
    return new NoticeCommand.Exhaust(
        "mail", WhyUndeliverable.ADDRESS_REFUSED, Stream.of(next).findFirst(), NOW);
  }

  private static final NoticeMovedOn MOVED_ON =
      new NoticeMovedOn(ID, ROSA, "mail", "text", "address-refused", NOW);
  private static final NoticeCommand ARRIVED = new NoticeCommand.NoteDelivered("mail", 1, NOW);

  @Test
  @DisplayName("goes on to the next channel, and is given up when there is none")
  void movesOn() {
    leadsTo(given(RAISED), exhaust("text"), MOVED_ON);
    leadsTo(given(RAISED, MOVED_ON), NOTE_SENT, SENT);
    leadsTo(given(RAISED), exhaust(), GIVEN_UP);
    leadsTo(given(RAISED, GIVEN_UP), exhaust("text"));
    leadsTo(given(RAISED, SENT, READ), exhaust("text"));
    isRefused(given(), exhaust(), "no-such-notice");
    isRefused(given(RAISED, CANCELLED), exhaust("text"), "cancelled");
  }

  @Test
  @DisplayName("that was taken and did not arrive goes on too")
  void takenAndLost() {
    leadsTo(given(RAISED, SENT), exhaust("text"), MOVED_ON);
    leadsTo(given(RAISED, SENT), exhaust(), GIVEN_UP);
  }

  @Test
  @DisplayName("that arrived after all counts as sent")
  void arrived() {
    leadsTo(given(RAISED), ARRIVED, SENT);
    leadsTo(given(RAISED, GIVEN_UP), ARRIVED, SENT);
    leadsTo(given(RAISED, SENT), ARRIVED);
    leadsTo(given(RAISED, SENT, READ), ARRIVED);
    isRefused(given(), ARRIVED, "no-such-notice");
    isRefused(given(RAISED, CANCELLED), ARRIVED, "cancelled");
  }

  @Test
  @DisplayName("that nobody confirms goes once more by another channel, and then to people")
  void escalated() {
    NoticeCommand second =
        new NoticeCommand.Escalate(EscalationStep.SECOND_CHANNEL, Optional.of("text"), NOW);
    NoticeCommand fitters =
        new NoticeCommand.Escalate(EscalationStep.FITTERS, Optional.empty(), NOW);
    NoticeEscalated again = new NoticeEscalated(ID, ROSA, "second-channel", "text", NOW);
    NoticeEscalated told = new NoticeEscalated(ID, ROSA, "fitters", null, NOW);
    leadsTo(given(RAISED, SENT), second, again);
    leadsTo(given(RAISED, SENT), fitters, told);
    leadsTo(given(RAISED), fitters, told);
    leadsTo(given(RAISED, GIVEN_UP), fitters, told);
    isRefused(given(RAISED), second, "on-its-way");
    isRefused(given(RAISED, GIVEN_UP), second, "given-up");
    isRefused(given(RAISED, CANCELLED), fitters, "cancelled");
    isRefused(given(), fitters, "no-such-notice");
    leadsTo(given(RAISED, SENT, READ), fitters);
    assertThat(given(RAISED, SENT, again).code()).isEqualTo("raised");
    assertThat(given(RAISED, SENT, told).code()).isEqualTo("sent");
    assertThat(given(RAISED, GIVEN_UP, told).code()).isEqualTo("undeliverable");
  }

  @Test
  @DisplayName("of which staff told the person counts as read")
  void reached() {
    NoticeCommand call = new NoticeCommand.Reach(ReachedBy.TELEPHONE, "fitter.north", NOW);
    PersonReached reached = new PersonReached(ID, ROSA, "telephone", "fitter.north", NOW);
    leadsTo(given(RAISED), call, reached);
    leadsTo(given(RAISED, SENT), call, reached);
    leadsTo(given(RAISED, GIVEN_UP), call, reached);
    leadsTo(given(RAISED, SENT, READ), call);
    leadsTo(given(RAISED, SENT, reached), call);
    leadsTo(given(RAISED, GIVEN_UP, reached), ACKNOWLEDGE);
    isRefused(given(RAISED, CANCELLED), call, "cancelled");
    isRefused(given(), call, "no-such-notice");
  }
}
