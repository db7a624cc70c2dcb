package org.tapeline.inventory.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("From the shelf")
class ShelfTest {

  private static Shelf shelf(int own, int any, int other) {
    return new Shelf(Map.of("model-a", own, "", any, "model-b", other));
  }

  @Test
  @DisplayName("a helmet's own parts are taken first, then those for any model")
  void ownFirst() {
    assertThat(shelf(1, 5, 5).forHelmet("model-a", m -> true)).isEqualTo("model-a");
    assertThat(shelf(0, 1, 5).forHelmet("model-a", m -> true)).isEqualTo("");
  }

  @Test
  @DisplayName("another model's parts are taken only where the table allows it")
  void others() {
    assertThat(shelf(0, 0, 5).forHelmet("model-a", m -> m.equals("model-b"))).isEqualTo("model-b");
    assertThat(shelf(0, 0, 5).forHelmet("model-a", m -> false)).isEqualTo("model-a");
  }

  @Test
  @DisplayName("what the books do not have is missing from the helmet's own")
  void none() {
    assertThat(new Shelf(Map.of()).forHelmet("model-a", m -> true)).isEqualTo("model-a");
    assertThat(shelf(-2, -1, 0).forHelmet("model-a", m -> true)).isEqualTo("model-a");
  }

  @Test
  @DisplayName("what leaves for no helmet is taken from where there is most")
  void fullest() {
    assertThat(shelf(1, 0, 3).fullest()).isEqualTo("model-b");
    assertThat(shelf(3, 3, 3).fullest()).isEqualTo("");
    assertThat(new Shelf(Map.of()).fullest()).isEqualTo("");
  }
}
