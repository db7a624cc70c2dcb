package org.tapeline.inventory.books;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.restock.RestockEvent.RestockReceived;
import org.tapeline.inventory.restock.RestockEvent.RestockRequested;
import org.tapeline.inventory.stock.StockEvent.PartMoved;
import org.tapeline.inventory.stock.StockEvent.PartUsed;
import org.tapeline.inventory.stock.StockEvent.StockCounted;

@DisplayName("The books made anew from the journal")
class ReplayTest {
  private static final Instant AT = Instant.parse("2026-08-01T12:00:00Z");
  private static final UUID REQUEST = new UUID(1, 1);
  private static final Optional<String> NONE = Optional.empty();

  private final Replay replay = new Replay();

  private int on(String account) {
    return replay.balances().on(account, "valve");
  }

  private void opened(String place, int pieces) {
    replay.add(
        new StockCounted(place, "valve", NONE, pieces, pieces, "opening-stock", NONE, "depot", AT));
  }

  private void asked(Optional<String> from) {
    replay.add(
        new RestockRequested(
            REQUEST, "restock", "NORTH", from, "valve", NONE, NONE, NONE, 3, 0, List.of(), AT, AT));
  }

  private void came(int good, int missing, int damaged) {
    replay.add(
        new RestockReceived(REQUEST, "NORTH", good, missing, damaged, 0, List.of(), "depot", AT));
  }

  @Test
  @DisplayName("have opening stock, and a variance on the account of its reason")
  void counts() {
    opened("NORTH", 8);
    replay.add(
        new StockCounted("NORTH", "valve", NONE, 6, -2, "count", Optional.of("lost"), "depot", AT));
    assertThat(on("place:NORTH")).isEqualTo(6);
    assertThat(on("outside:lost")).isEqualTo(2);
    assertThat(on("outside:opening-stock")).isEqualTo(-8);
  }

  @Test
  @DisplayName("have what a fit used, also when the books had none")
  void used() {
    replay.add(new PartUsed("NORTH", "valve", 1, REQUEST, Optional.of("any")));
    assertThat(on("place:NORTH")).isEqualTo(-1);
    assertThat(on("outside:used")).isEqualTo(1);
  }

  @Test
  @DisplayName("have both ends of a move by hand")
  void moved() {
    opened("DEPOT", 5);
    replay.add(
        new PartMoved(
            REQUEST, "DEPOT", "valve", NONE, 2, "place:DEPOT", "place:NORTH", "other", "x", AT));
    assertThat(on("place:DEPOT")).isEqualTo(3);
    assertThat(on("place:NORTH")).isEqualTo(2);
  }

  @Test
  @DisplayName("have only the good pieces of what came short and damaged from outside")
  void receivedFromOutside() {
    asked(NONE);
    came(1, 1, 1);
    assertThat(on("place:NORTH")).isEqualTo(1);
    assertThat(on("outside:supplier")).isEqualTo(-1);
    assertThat(on("outside:damaged")).isZero();
  }

  @Test
  @DisplayName("have both ends of a transfer, and what it spoilt written off where it came from")
  void transferred() {
    opened("RIVER", 4);
    asked(Optional.of("RIVER"));
    came(2, 0, 1);
    assertThat(on("place:RIVER")).isEqualTo(1);
    assertThat(on("place:NORTH")).isEqualTo(2);
    assertThat(on("outside:damaged")).isEqualTo(1);
  }

  @Test
  @DisplayName("take no notice of helmets, and of what was never asked for")
  void notParts() {
    came(1, 0, 0);
    assertThat(replay.balances().lines()).isEmpty();
  }
}
