package org.tapeline.notify.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tapeline.notify.words.Facts;
import org.tapeline.notify.words.Language;
import org.tapeline.notify.words.Letter;
import org.tapeline.notify.words.Phrases;
import org.tapeline.notify.words.SampleFacts;
import org.tapeline.notify.words.Template;
import org.tapeline.notify.words.Words;

@DisplayName("The words of a text message")
class TextBodyTest {
  private static final Words WORDS = Words.load();
  private static final Letter.Link LINK =
      new Letter.Link(
          "Read it", "https://helmets.larkfield.example.org/notify/n/" + "A".repeat(76), true);

  record Case(Language language, String template) {}

  static Stream<Case> all() {
    return Stream.of(Language.values())
        .flatMap(language -> Template.NAMES.stream().map(name -> new Case(language, name)));
  }

  private static Letter letter(Case c, String player) {
    Phrases phrases = WORDS.phrases(c.language());
    Facts facts = SampleFacts.of(c.template(), phrases).with("player", player);
    return WORDS.write(c.language(), c.template(), facts, LINK);
  }

  @ParameterizedTest
  @MethodSource("all")
  @DisplayName("fit into two segments of the plain alphabet, with the whole link")
  void fit(Case c) {
    Letter letter = letter(c, "José Ángel");
    String body = TextBody.of(letter).orElseThrow();
    assertThat(body).endsWith(LINK.address()).isEqualTo(Gsm.plain(letter.text()));
    assertThat(Gsm.has(body)).as(body).isTrue();
    assertThat(Gsm.segments(body)).as(body).isLessThanOrEqualTo(2);
  }

  @ParameterizedTest
  @MethodSource("all")
  @DisplayName("never say why: no finding, no injury, no family name")
  void neverWhy(Case c) {
    Template template = WORDS.template(c.language(), c.template());
    assertThat(template.text().places()).isSubsetOf(Template.IN_A_TEXT).contains("link");
    assertThat(Template.IN_A_TEXT).doesNotContain("why", "until", "team");
  }

  @Test
  @DisplayName("shrink to the headline and the link when a name leaves too little room")
  void tooLong() {
    Letter letter = letter(new Case(Language.ENGLISH, "do-not-wear-dated"), "王小明");
    assertThat(TextBody.of(letter)).contains("Do not wear this helmet. " + LINK.address());
  }

  @Test
  @DisplayName("are not sent in part: a link that is too long gives none")
  void noRoom() {
    Letter.Link endless = new Letter.Link("x", "https://example.org/" + "a".repeat(300), true);
    Phrases phrases = WORDS.phrases(Language.ENGLISH);
    Letter letter =
        WORDS.write(
            Language.ENGLISH, "fitted-again", SampleFacts.of("fitted-again", phrases), endless);
    assertThat(TextBody.of(letter)).isEmpty();
  }
}
