package org.tapeline.inventory.reconditioning;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.reconditioning.BatchDecider.Decision;
import org.tapeline.inventory.reconditioning.BatchDecider.Decision.Accepted;
import org.tapeline.inventory.reconditioning.BatchDecider.Decision.Refused;
import org.tapeline.inventory.reconditioning.BatchEvent.BatchClosed;
import org.tapeline.inventory.reconditioning.BatchEvent.BatchReceivedBack;
import org.tapeline.inventory.reconditioning.BatchEvent.BatchSent;
import org.tapeline.inventory.reconditioning.BatchEvent.Result;

@DisplayName("A batch for the reconditioner")
class BatchDeciderTest {
  private static final UUID ID = UUID.fromString("0198f0c2-7777-7000-8000-000000000001");
  private static final Instant NOW = Instant.parse("2026-12-01T15:06:00Z");
  private static final LocalDate BACK = LocalDate.of(2027, 1, 12);
  private static final BatchEvent SENT =
      new BatchSent(ID, "DEPOT", "recon-1", List.of("A", "B"), BACK, NOW);
  private static final BatchEvent A_CAME =
      new BatchReceivedBack(ID, "DEPOT", List.of(result("A", 4500)), NOW);

  @Test
  @DisplayName("goes with what is packed, once")
  void sends() {
    assertThat(after(send("A", "B"))).isEqualTo(new Accepted(SENT));
    assertThat(after(send())).isInstanceOf(Refused.class);
    assertThat(code(after(send("A"), SENT))).isEqualTo("batch-sent");
  }

  @Test
  @DisplayName("takes back what went, each helmet once")
  void receives() {
    assertThat(after(receive("A"), SENT)).isInstanceOf(Accepted.class);
    assertThat(code(after(receive("A"), SENT, A_CAME))).isEqualTo("not-out");
    assertThat(code(after(receive("C"), SENT))).isEqualTo("not-out");
    assertThat(code(after(receive("B", "B"), SENT))).isEqualTo("no-helmets");
    assertThat(code(after(receive(), SENT))).isEqualTo("no-helmets");
    assertThat(code(after(receive("A")))).isEqualTo("batch-not-sent");
  }

  @Test
  @DisplayName("is closed with its cost, and says what is missing")
  void closes() {
    assertThat(after(close(), SENT, A_CAME))
        .isEqualTo(new Accepted(new BatchClosed(ID, List.of("B"), 4500, "USD", NOW)));
    assertThat(code(after(close()))).isEqualTo("batch-not-sent");
    assertThat(code(after(close(), SENT, closed()))).isEqualTo("batch-closed");
  }

  @Test
  @DisplayName("takes back a missing helmet that turns up after it was closed")
  void turnsUp() {
    assertThat(after(receive("B"), SENT, A_CAME, closed())).isInstanceOf(Accepted.class);
    assertThat(code(after(receive("A"), SENT, A_CAME, closed()))).isEqualTo("not-out");
  }

  private static Result result(String tag, long cents) {
    return new Result(tag, "recertified", cents, "USD");
  }

  private static BatchCommand send(String... tags) {
    return new BatchCommand.Send("DEPOT", "recon-1", List.of(tags), BACK, NOW);
  }

  private static BatchCommand receive(String... tags) {
    List<Result> results = Arrays.stream(tags).map(t -> result(t, 4500)).toList();
    return new BatchCommand.Receive("DEPOT", results, NOW);
  }

  private static BatchCommand close() {
    return new BatchCommand.Close("USD", NOW);
  }

  private static BatchEvent closed() {
    return new BatchClosed(ID, List.of("B"), 4500, "USD", NOW);
  }

  private static Decision after(BatchCommand command, BatchEvent... before) {
    return BatchDecider.decide(Batch.of(ID, List.of(before)), command);
  }

  private static String code(Decision decision) {
    return ((Refused) decision).code();
  }
}
