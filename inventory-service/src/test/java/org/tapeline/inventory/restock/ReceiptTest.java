package org.tapeline.inventory.restock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.restock.Receipt.Came;
import org.tapeline.inventory.restock.Restock.Kind;
import org.tapeline.inventory.restock.Restock.State;
import org.tapeline.journal.quarkus.http.Problem;

@DisplayName("What came")
class ReceiptTest {

  @Test
  @DisplayName("is all that was asked for when nothing else is said")
  void all() {
    assertThat(Receipt.ALL.of(asked(Optional.empty(), 4))).isEqualTo(new Came(4, 4, 0));
  }

  @Test
  @DisplayName("is short of what did not come, and over what was not asked for")
  void shortAndOver() {
    Came few = Receipt.of(2, 1).of(asked(Optional.empty(), 4));
    assertThat(few.missing()).isEqualTo(1);
    assertThat(few.over()).isZero();
    Came many = Receipt.of(5, 1).of(asked(Optional.empty(), 4));
    assertThat(many.missing()).isZero();
    assertThat(many.over()).isEqualTo(2);
  }

  @Test
  @DisplayName("from outside is something, and by transfer not more than was sent")
  void refused() {
    assertThatThrownBy(() -> Receipt.of(0, 0).of(asked(Optional.empty(), 4)))
        .isInstanceOf(Problem.class)
        .hasMessageContaining("Cancel");
    assertThatThrownBy(() -> Receipt.of(5, 0).of(asked(Optional.of("DEPOT"), 4)))
        .isInstanceOf(Problem.class)
        .hasMessageContaining("No more can come than was sent: 4");
    assertThatThrownBy(() -> Receipt.of(-1, 0).of(asked(Optional.empty(), 4)))
        .isInstanceOf(Problem.class);
  }

  @Test
  @DisplayName("costs what people write, with or without hundredths")
  void money() {
    assertThat(Money.of(null)).isEmpty();
    assertThat(Money.of(" 1,250.5 ")).isEqualTo(OptionalLong.of(125_050));
    assertThat(Money.of("500")).isEqualTo(OptionalLong.of(50_000));
    assertThat(Suggestion.money(125_050)).isEqualTo("1,250.50");
    for (String wrong : new String[] {"-1", "1.234", "a lot", "1e9", "12345678901"}) {
      assertThatThrownBy(() -> Money.of(wrong)).as(wrong).isInstanceOf(Problem.class);
    }
  }

  private static Restock asked(Optional<String> from, int quantity) {
    return new Restock(
        new UUID(7, 7),
        from.isPresent() ? Kind.TRANSFER : Kind.RESTOCK,
        "NORTH",
        from,
        "valve",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        quantity,
        0,
        State.REQUESTED,
        Instant.EPOCH);
  }
}
