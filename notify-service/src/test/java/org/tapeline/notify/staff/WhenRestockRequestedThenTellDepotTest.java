package org.tapeline.notify.staff;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalInt;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.notify.notice.NoticeKind;

@DisplayName("When a restock is requested, then the depot")
class WhenRestockRequestedThenTellDepotTest {

  @Test
  @DisplayName("is told of a request it has not heard of")
  void first() {
    assertThat(WhenRestockRequestedThenTellDepot.react(OptionalInt.empty(), 3))
        .contains(NoticeKind.RESTOCK_REQUEST);
  }

  @Test
  @DisplayName("is told of another amount")
  void changed() {
    assertThat(WhenRestockRequestedThenTellDepot.react(OptionalInt.of(3), 4))
        .contains(NoticeKind.RESTOCK_CHANGED);
  }

  @Test
  @DisplayName("is not told the same amount again")
  void same() {
    assertThat(WhenRestockRequestedThenTellDepot.react(OptionalInt.of(3), 3)).isEmpty();
  }
}
