package org.tapeline.notify.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("Plain words")
class PlainWordsTest {
  private static final Words WORDS = Words.load();
  private static final Letter.Link LINK =
      new Letter.Link("Read it", "https://helmets.example.org/notify/n/AAAA", true);

  /** An index says nothing about fewer words than these. */
  private static final int FEWEST_WORDS = 10;

  record Case(Language language, String what, String text) {
    @Override
    public String toString() {
      return language.code() + " " + what;
    }
  }

  static Stream<Case> letters() {
    return Stream.of(Language.values())
        .flatMap(language -> Template.NAMES.stream().flatMap(name -> of(language, name)));
  }

  private static Stream<Case> of(Language language, String template) {
    Phrases phrases = WORDS.phrases(language);
    Letter letter = WORDS.write(language, template, SampleFacts.of(template, phrases), LINK);
    String body =
        String.join(
            " ",
            letter.headline() + ".",
            letter.happened(),
            letter.now(),
            letter.when(),
            letter.ask());
    return Stream.of(
            new Case(language, template, body),
            new Case(language, template + " with the caution", body + " " + phrases.of("caution")),
            new Case(language, template + " as a text message", letter.text()))
        .filter(PlainWordsTest::longEnough);
  }

  /** Phrases that stand together on a page, and each long one alone. */
  static Stream<Case> phrases() {
    return Stream.of(Language.values()).flatMap(PlainWordsTest::phrases);
  }

  private static Stream<Case> phrases(Language language) {
    Phrases phrases = WORDS.phrases(language);
    Map<String, String> texts = new LinkedHashMap<>();
    for (String key : new TreeSet<>(phrases.keys())) {
      String said = sentence(phrases.of(key, SampleFacts.all(phrases)));
      texts.merge(key.replaceFirst("\\..*", "") + ".*", said, (one, more) -> one + " " + more);
      texts.put(key, said);
    }
    return texts.entrySet().stream()
        .map(text -> new Case(language, text.getKey(), text.getValue()))
        .filter(PlainWordsTest::longEnough);
  }

  private static boolean longEnough(Case c) {
    return TextCounts.of(c.text(), word -> 1).words() >= FEWEST_WORDS;
  }

  private static String sentence(String said) {
    return said.matches(".*[.?!]\"?$") ? said : said.replaceAll(":$", "") + ".";
  }

  @ParameterizedTest
  @MethodSource({"letters", "phrases"})
  @DisplayName("read at grade 6 or below in English, fairly easy or better in Spanish")
  void plain(Case c) {
    switch (c.language()) {
      case ENGLISH ->
          assertThat(ReadingGrade.of(c.text()))
              .as("Flesch-Kincaid grade of: %s", c.text())
              .isLessThanOrEqualTo(ReadingGrade.MOST);
      case SPANISH ->
          assertThat(Perspicuity.of(c.text()))
              .as("perspicuity (INFLESZ) of: %s", c.text())
              .isGreaterThan(Perspicuity.LEAST);
    }
  }

  @Test
  @DisplayName("are graded in English as published")
  void english() {
    // The example of the English Wikipedia, "Flesch-Kincaid readability tests": 13 words, 24
    // syllables, grade 11.3.
    String platypus =
        "The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.";
    assertThat(TextCounts.of(platypus, ReadingGrade::syllables))
        .isEqualTo(new TextCounts(13, 1, 24));
    assertThat(ReadingGrade.of(platypus)).isCloseTo(11.3, within(0.05));
    // docs/references.md, G: recomputed from the formula.
    assertThat(ReadingGrade.of(new TextCounts(100, 5, 130))).isCloseTo(7.55, within(0.005));
  }

  @Test
  @DisplayName("are rated in Spanish by Szigriszt-Pazos, on the INFLESZ scale")
  void spanish() {
    // No worked example was found; recomputed by hand: 206.835 - 62.3 * 2 - 20.
    assertThat(Perspicuity.of(new TextCounts(100, 5, 200))).isCloseTo(62.235, within(0.0005));
    // 10 words, 2 sentences, 19 syllables.
    assertThat(Perspicuity.of("No use este casco roto. Pregunte en la caseta azul."))
        .isCloseTo(206.835 - 62.3 * 1.9 - 5, within(0.0005));
    assertThat(Stream.of(40.0, 55.0, 65.0, 80.0, 80.1).map(Perspicuity::level))
        .containsExactly("very hard", "rather hard", "normal", "fairly easy", "very easy");
  }

  @Test
  @DisplayName("count a time as one word and no end of a sentence, and leave addresses out")
  void counts() {
    assertThat(TextCounts.of("El sábado, a las 9:00 a. m.: https://e.org/x", w -> 1))
        .isEqualTo(new TextCounts(7, 1, 7));
    assertThat(TextCounts.of("One. Two! Three", w -> 1).sentences()).isEqualTo(3);
  }

  @ParameterizedTest
  @CsvSource({
    "helmet,2", "wear,1", "re-fit,2", "come,1", "licensed,2", "professional,4", "notes,1",
    "player,2", "playing,2", "guardian,3", "passed,1", "needed,2", "boxes,2", "eye,1"
  })
  @DisplayName("are counted in English syllables")
  void englishSyllables(String word, int syllables) {
    assertThat(ReadingGrade.syllables(word)).isEqualTo(syllables);
  }

  // From memory, by the rules of the Real Academia's orthography.
  @ParameterizedTest
  @CsvSource({
    "casa,2",
    "casco,2",
    "ciudad,2",
    "cuidado,3",
    "país,2",
    "caída,3",
    "teatro,3",
    "leer,2",
    "aéreo,4",
    "héroe,3",
    "oía,3",
    "vivíais,3",
    "averiguáis,4",
    "construir,2",
    "paranoia,4",
    "ahijado,3",
    "prohíbe,3",
    "búho,2",
    "zoólogo,4",
    "guerra,2",
    "pingüino,3",
    "quiero,2",
    "quién,1",
    "agua,2",
    "agüero,3",
    "buey,1",
    "Uruguay,3",
    "rey,1",
    "reyes,2",
    "y,1",
    "muy,1",
    "día,2",
    "dio,1",
    "reposición,4",
    "revisión,3",
    "recibirá,4",
    "chiita,3",
    "13,1",
    "ñandú,2"
  })
  @DisplayName("are counted in Spanish syllables")
  void spanishSyllables(String word, int syllables) {
    assertThat(SpanishSyllables.of(word)).isEqualTo(syllables);
  }
}
