package org.tapeline.fitting.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The words in which a guardian chooses")
class ChoiceWordsTest {
  private static final Instant NINE_FORTY = Instant.parse("2025-09-13T15:40:00Z");
  private static final ZoneId DENVER = ZoneId.of("America/Denver");

  @Test
  @DisplayName("are there in each language, with the same facts")
  void complete() {
    Map<ChoiceLanguage, ChoiceWords> words = ChoiceWords.load();
    assertThat(words).containsOnlyKeys(ChoiceLanguage.values());
    ChoiceWords spanish = words.get(ChoiceLanguage.SPANISH);
    assertThat(spanish.of("heading", Map.of("player", "Mia")))
        .isEqualTo("Elija otra hora para Mia");
    assertThatIllegalArgumentException().isThrownBy(() -> spanish.of("heading"));
    assertThatIllegalArgumentException().isThrownBy(() -> spanish.of("no-such-words"));
  }

  @Test
  @DisplayName("write dates and times as their readers do, in the time of the field")
  void moments() {
    assertThat(ChoiceLanguage.ENGLISH.date(NINE_FORTY, DENVER)).isEqualTo("Saturday, September 13");
    assertThat(ChoiceLanguage.ENGLISH.time(NINE_FORTY, DENVER)).isEqualTo("9:40 AM");
    assertThat(ChoiceLanguage.SPANISH.date(NINE_FORTY, DENVER))
        .isEqualTo("Sábado 13 de septiembre");
    assertThat(ChoiceLanguage.SPANISH.time(NINE_FORTY, DENVER)).isEqualTo("9:40 a. m.");
  }

  @Test
  @DisplayName("are English for a language that nobody wrote in")
  void otherLanguage() {
    assertThat(ChoiceLanguage.of("fr")).isEqualTo(ChoiceLanguage.ENGLISH);
    assertThat(ChoiceLanguage.of("es")).isEqualTo(ChoiceLanguage.SPANISH);
  }
}
