package org.tapeline.stack.launch;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The demo's stack")
class StackTest {

  @ParameterizedTest
  @CsvSource({"10:00:30, 10:04", "23:54, 23:58", "23:57, 23:59", "00:00, 00:04"})
  @DisplayName("tells staff of their day some minutes after its start, never on the day before")
  void digestHour(LocalTime start, String told) {
    assertThat(Stack.digestHour(start)).hasToString(told);
  }
}
