package org.tapeline.notify.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tapeline.journal.EventJson;

@DisplayName("The words of notices")
class WordsTest {
  private static final Words WORDS = Words.load();
  private static final Letter.Link LINK = new Letter.Link("Read it", "https://example.org", true);

  record Case(Language language, String template) {}

  static Stream<Case> all() {
    return Stream.of(Language.values())
        .flatMap(language -> Template.NAMES.stream().map(name -> new Case(language, name)));
  }

  private static Letter letter(Case c) {
    Phrases phrases = WORDS.phrases(c.language());
    return WORDS.write(c.language(), c.template(), SampleFacts.of(c.template(), phrases), LINK);
  }

  private static String body(Letter letter) {
    return String.join(
        " ", letter.headline() + ".", letter.happened(), letter.now(), letter.when(), letter.ask());
  }

  @ParameterizedTest
  @MethodSource("all")
  @DisplayName("are complete in every language with the facts at hand")
  void complete(Case c) {
    Letter letter = letter(c);
    assertThat(List.of(letter.subject(), letter.headline(), body(letter)))
        .allSatisfy(text -> assertThat(text).isNotBlank().doesNotContain("{", "}"));
  }

  @ParameterizedTest
  @MethodSource("all")
  @DisplayName("ask for the same facts in every language and field")
  void samePlaces(Case c) {
    Template english = WORDS.template(Language.ENGLISH, c.template());
    Template other = WORDS.template(c.language(), c.template());
    assertThat(other.version()).isEqualTo(english.version());
    assertThat(other.sentences().stream().map(Sentence::places).toList())
        .isEqualTo(english.sentences().stream().map(Sentence::places).toList());
  }

  @Test
  @DisplayName("that all notices share are the same set and ask for the same facts")
  void phrases() {
    Phrases english = WORDS.phrases(Language.ENGLISH);
    Phrases spanish = WORDS.phrases(Language.SPANISH);
    assertThat(spanish.keys()).isEqualTo(english.keys());
    for (String key : english.keys()) {
      assertThat(spanish.sentence(key).places()).as(key).isEqualTo(english.sentence(key).places());
    }
  }

  @Test
  @DisplayName("start large even when a fact does not")
  void startLarge() {
    Facts facts = Facts.none().with("player", "your player");
    assertThat(new Sentence("{player} is told.").fill(facts)).isEqualTo("Your player is told.");
  }

  @Test
  @DisplayName("never carry a line break from a fact into a subject")
  void noLineBreaks() {
    Facts facts = Facts.none().with("player", "Mia\r\nBcc: all");
    assertThat(new Sentence("For {player}").fill(facts)).isEqualTo("For Mia Bcc: all");
  }

  @Test
  @DisplayName("are refused when they are blank, broken or ask for an unknown fact")
  void refused() {
    Sentence asks = new Sentence("{team}");
    Facts none = Facts.none();
    assertThatIllegalArgumentException().isThrownBy(() -> new Sentence(" "));
    assertThatIllegalArgumentException().isThrownBy(() -> new Sentence("one {brace"));
    assertThatIllegalArgumentException().isThrownBy(() -> asks.fill(none));
    assertThatIllegalArgumentException().isThrownBy(() -> none.with("familyname", "x"));
  }

  @Test
  @DisplayName("can name no more of a child than the first name")
  void firstNameOnly() {
    assertThat(Facts.NAMES).doesNotContain("name", "surname", "birthdate");
    assertThat(Set.of("player", "team")).isSubsetOf(Facts.NAMES);
  }

  @Test
  @DisplayName("name every reason for which fitting opens a case")
  void reasons() throws IOException {
    Path contract =
        Path.of(System.getProperty("tapeline.root"), "docs/events/fitting/refit-opened.v1.json");
    JsonNode reasons = EventJson.MAPPER.readTree(contract.toFile()).at("/properties/why/enum");
    assertThat(reasons).isNotEmpty();
    reasons.forEach(
        reason ->
            assertThat(WORDS.phrases(Language.ENGLISH).keys()).contains("why." + reason.asText()));
  }

  @Test
  @DisplayName("say teams and items as people do")
  void tradeWords() {
    Phrases english = WORDS.phrases(Language.ENGLISH);
    assertThat(TradeWords.team("U10-HAWKS")).isEqualTo("U10 Hawks");
    assertThat(TradeWords.item("jaw-pad-15mm", english)).isEqualTo("jaw pad 15mm");
    assertThat(TradeWords.item("helmet:model-a:youth-medium", english))
        .isEqualTo("helmet, Model A, Youth medium");
  }

  @Test
  @DisplayName("exist for a language tag with a region, and not for a language nobody wrote in")
  void languages() {
    assertThat(Language.of("es-MX")).contains(Language.SPANISH);
    assertThat(Language.of("fr")).isEmpty();
  }
}
