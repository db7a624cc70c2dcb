package org.tapeline.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("An event is not written")
class NotTextTest {
  private static final EventTypes TYPES = EventTypes.of("test").with("counted", 1, Counted.class);

  @ParameterizedTest
  @DisplayName("with a character that is none in one of its texts")
  @ValueSource(strings = {"\0", "a\0b", "\\\0", "\ud800", "a\udfff"})
  void refused(String text) {
    assertThatThrownBy(() -> TYPES.write(new Counted(text, 1))).isInstanceOf(NotText.class);
  }

  @Test
  @DisplayName("but with everything that only looks like one")
  void taken() {
    for (String text : new String[] {"\\u0000", "\\\\u0000", "u0000", "\ud83c\udfc8", "\u2400"}) {
      assertThat(TYPES.read("org.tapeline.test.counted.v1", TYPES.write(new Counted(text, 1))))
          .isEqualTo(new Counted(text, 1));
    }
  }
}
