package org.tapeline.notify.whole;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.EventJson;
import org.tapeline.journal.EventTypes;
import org.tapeline.journal.Subscription;
import org.tapeline.journal.UuidV7;
import org.tapeline.notify.help.HelpAnswered;
import org.tapeline.notify.help.HelpAsked;
import org.tapeline.notify.notice.EscalationStep;
import org.tapeline.notify.notice.NoticeAcknowledged;
import org.tapeline.notify.notice.NoticeCancelled;
import org.tapeline.notify.notice.NoticeEscalated;
import org.tapeline.notify.notice.NoticeKind;
import org.tapeline.notify.notice.NoticeMovedOn;
import org.tapeline.notify.notice.NoticeRaised;
import org.tapeline.notify.notice.NoticeSent;
import org.tapeline.notify.notice.NoticeUndeliverable;
import org.tapeline.notify.notice.PersonReached;
import org.tapeline.notify.notice.ReachedBy;
import org.tapeline.notify.notice.Urgency;
import org.tapeline.notify.notice.WhyUndeliverable;
import org.tapeline.notify.optout.OptedIn;
import org.tapeline.notify.optout.OptedOut;
import org.tapeline.notify.wish.WishesSet;
import org.tapeline.testkit.EventContracts;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@QuarkusTestResource(SmtpServer.class)
@Tag("servers")
@DisplayName("The contracts of docs/events")
class ContractsTest {
  private static final EventContracts CONTRACTS = EventContracts.load();
  private static final UUID ID = UuidV7.next();
  private static final Instant NOW = Instant.parse("2025-09-12T17:04:05.123Z");

  @Inject EventTypes types;
  @Inject Subscription subscription;

  private void fits(Record event) {
    JsonNode json = EventJson.MAPPER.valueToTree(event);
    CONTRACTS.validateProduced(types.nameOf(event).text(), json);
  }

  @Test
  @DisplayName("are kept by whatever is said here, with every code that may stand in it")
  void produced() {
    for (NoticeKind kind : NoticeKind.values()) {
      for (Urgency urgency : Urgency.values()) {
        fits(raised(kind, urgency, ID));
      }
    }
    fits(raised(NoticeKind.RESTOCK_REQUEST, Urgency.NORMAL, null));
    fits(new NoticeSent(ID, "depot.MAIN", "mail", 1, NOW));
    for (WhyUndeliverable why : WhyUndeliverable.values()) {
      fits(new NoticeUndeliverable(ID, ID.toString(), "mail", why.code(), NOW));
    }
    fits(new NoticeAcknowledged(ID, ID.toString(), NOW));
    for (String why : List.of("case-closed", "overtaken", "opted-out")) {
      fits(new NoticeCancelled(ID, ID.toString(), why, NOW));
    }
    fits(new NoticeSent(ID, ID.toString(), "text", 2, NOW));
    fits(new NoticeMovedOn(ID, ID.toString(), "mail", "text", "address-refused", NOW));
    fits(new NoticeMovedOn(ID, ID.toString(), "text", "mail", "not-delivered", NOW));
    fits(new HelpAsked(ID, ID, ID, Optional.of("NORTH"), NOW));
    fits(new HelpAsked(ID, ID, ID, Optional.empty(), NOW));
    fits(new HelpAnswered(ID, ID, "fitter.north", NOW));
    fits(new OptedOut(ID, "mail", ID, NOW));
    fits(new OptedIn(ID, "guardian", NOW));
    fits(new OptedIn(ID, "staff", NOW));
    fits(new WishesSet(ID, List.of(), null, null, null, "staff", NOW));
    fits(
        new WishesSet(
            ID, List.of("text", "mail"), "21:30", "07:00", "America/Denver", "guardian", NOW));
    for (EscalationStep step : EscalationStep.values()) {
      String to = step.reachesPeople() ? null : "text";
      fits(new NoticeEscalated(ID, ID.toString(), step.code(), to, NOW));
    }
    for (ReachedBy way : ReachedBy.values()) {
      fits(new PersonReached(ID, ID.toString(), way.code(), "fitter.north", NOW));
    }
  }

  private static NoticeRaised raised(NoticeKind kind, Urgency urgency, UUID refitCase) {
    return new NoticeRaised(
        ID,
        "fitters.NORTH",
        kind.code(),
        urgency.code(),
        List.of(ID),
        List.of(ID),
        refitCase,
        "do-not-wear-dated",
        1,
        "es",
        NOW);
  }

  @Test
  @DisplayName("exist for exactly what is said here, and their examples can be read again")
  void examples() {
    assertThat(CONTRACTS.typesOf("notify.events")).isEqualTo(types.names());
    for (String type : types.names()) {
      JsonNode example = CONTRACTS.exampleOf(type);
      CONTRACTS.validateProduced(type, example);
      Record read = types.read(type, example.toString());
      assertThat(EventJson.MAPPER.<JsonNode>valueToTree(read)).isEqualTo(example);
    }
  }

  @Test
  @DisplayName("hold every field that is read here")
  void consumed() {
    subscription.views().forEach(CONTRACTS::checkConsumed);
  }

  @Test
  @DisplayName("are each handled or passed over on purpose, on every topic")
  void everyTypeIsKnown() {
    for (String topic : subscription.topics()) {
      Set<String> unknown = new TreeSet<>(CONTRACTS.typesOf(topic));
      assertThat(unknown).as(topic).isNotEmpty();
      unknown.removeIf(subscription::knows);
      assertThat(unknown).as("nobody decided about these on %s", topic).isEmpty();
    }
  }
}
