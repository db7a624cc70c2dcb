package org.tapeline.notify.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("A letter that was written")
class RecallTest {
  private static final Words WORDS = Words.load();
  private static final Letter.Link LINK = new Letter.Link("Read it", "https://e.org/n/x", true);

  static Stream<String> templates() {
    return Template.NAMES.stream();
  }

  private static Letter letter(Language language, String template, String player) {
    Facts facts = SampleFacts.of(template, WORDS.phrases(language));
    Facts named = facts.byName().containsKey("player") ? facts.with("player", player) : facts;
    if (named.byName().containsKey("why")) {
      named = named.with("why", WORDS.phrases(language).why("damage", named));
    }
    return WORDS.write(language, template, named, LINK);
  }

  @ParameterizedTest
  @MethodSource("templates")
  @DisplayName("can be read in the other language, from its words alone")
  void otherLanguage(String template) {
    for (Language language : Language.values()) {
      Language other = language == Language.ENGLISH ? Language.SPANISH : Language.ENGLISH;
      for (String player : List.of("Mia", "O'Neil-de la Cruz", "Ángel")) {
        Letter written = letter(language, template, player);
        Facts facts = Recall.of(WORDS, language, template, written).orElseThrow();
        Facts said = Translation.of(facts, WORDS.phrases(language), WORDS.phrases(other));
        assertThat(WORDS.write(other, template, said, LINK))
            .as("%s, %s", template, player)
            .isEqualTo(letter(other, template, player));
      }
    }
  }

  @Test
  @DisplayName("with other words than those of today is not guessed at")
  void otherWords() {
    Letter old =
        new Letter("en", "Old subject", "Old", "Old", "Old", "Old", "Old", LINK, "Old text");
    assertThat(Recall.of(WORDS, Language.ENGLISH, "refit-date", old)).isEmpty();
  }

  @Test
  @DisplayName("has a link whose label is said in the other language too")
  void label() {
    Phrases english = WORDS.phrases(Language.ENGLISH);
    Phrases spanish = WORDS.phrases(Language.SPANISH);
    assertThat(Translation.of(english.of("link.guardian"), english, spanish))
        .isEqualTo(spanish.of("link.guardian"));
    assertThat(Translation.of("Unknown", english, spanish)).isEqualTo("Unknown");
  }
}
