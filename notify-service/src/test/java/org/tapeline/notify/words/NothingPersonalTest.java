package org.tapeline.notify.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.tapeline.notify.text.Gsm;
import org.tapeline.notify.text.TextBody;

@Label("What a lock screen shows, whatever the name")
class NothingPersonalTest {
  private static final Words WORDS = Words.load();

  /** As long as real ones: host, path, token. */
  private static final Letter.Link LINK =
      new Letter.Link(
          "Read it", "https://helmets.larkfield.example.org/notify/n/" + "A".repeat(76), true);

  /** Starts of words that would tell of a body or a finding. */
  private static final List<String> OF_HEALTH =
      List.of(
          "concus",
          "injur",
          "hurt",
          "head",
          "brain",
          "neck",
          "doctor",
          "medic",
          "health",
          "symptom",
          "diagnos",
          "hospital",
          "damag",
          "crack",
          "fail",
          "conmo",
          "lesi",
          "duel",
          "dolor",
          "cabeza",
          "cerebr",
          "cuello",
          "médic",
          "salud",
          "síntoma",
          "golpe",
          "dañ",
          "rot");

  @Provide
  Arbitrary<String> odd() {
    return Arbitraries.oneOf(
        Arbitraries.strings().ofMinLength(1).ofMaxLength(200),
        Arbitraries.strings().withChars("áñÑüçŁş'’-. ").alpha().ofMinLength(1).ofMaxLength(60),
        Arbitraries.of(
            "{why}",
            "$1\\",
            "<b>Mia</b>",
            "Mia\r\nBcc: all",
            "王小明",
            "م",
            "O’Neil-de la Cruz",
            "👩‍👩‍👧",
            "José María de los Ángeles Guadalupe"));
  }

  private static Letter letter(Language language, String template, String name) {
    Facts facts = SampleFacts.of(template, WORDS.phrases(language));
    Facts named = facts.byName().containsKey("player") ? facts.with("player", name) : facts;
    return WORDS.write(language, template, named, LINK);
  }

  @Property(tries = 40)
  @Label("is one line each, and a text message of two segments at most with its whole link")
  void fits(@ForAll("odd") String name) {
    for (Language language : Language.values()) {
      for (String template : Template.NAMES) {
        Letter letter = letter(language, template, name);
        assertThat(letter.subject().chars()).noneMatch(Character::isISOControl);
        String body = TextBody.of(letter).orElseThrow();
        assertThat(body).contains(LINK.address());
        assertThat(Gsm.segments(body)).as(body).isLessThanOrEqualTo(TextBody.MOST_SEGMENTS);
      }
    }
  }

  @Property(tries = 20)
  @Label("says nothing of the reason, whatever the reason is")
  void neverWhy(@ForAll("odd") String reason) {
    String marked = "QXQ" + reason + "QXQ";
    for (Language language : Language.values()) {
      for (String template : Template.NAMES) {
        Facts facts =
            SampleFacts.of(template, WORDS.phrases(language))
                .with("why", marked)
                .with("until", marked);
        Letter letter = WORDS.write(language, template, facts, LINK);
        assertThat(letter.subject() + letter.text()).doesNotContain("QXQ");
      }
    }
  }

  @Example
  @Label("has no word of health")
  void noWordOfHealth() {
    for (Language language : Language.values()) {
      for (String template : Template.NAMES) {
        Letter letter = letter(language, template, "Mia");
        String shown = (letter.subject() + " " + letter.text()).toLowerCase(Locale.ROOT);
        for (String word : shown.replace(LINK.address(), "").split("[^\\p{L}]+")) {
          assertThat(OF_HEALTH)
              .as("%s %s: %s", language, template, word)
              .noneMatch(word::startsWith);
        }
      }
    }
  }

  @Example
  @Label("asks for no fact that could be a family name, a birth date or a finding")
  void nothingToAskFor() {
    assertThat(Facts.NAMES)
        .noneMatch(name -> name.matches(".*(family|surname|full|birth|born|age|finding|health).*"));
    Sentence plain = new Sentence("x");
    Sentence link = new Sentence("{link}");
    for (String place : Set.of("{why}", "{until}", "{team}")) {
      Sentence asks = new Sentence("{link} " + place);
      assertThatIllegalArgumentException()
          .isThrownBy(() -> new Template("t", 1, plain, plain, plain, plain, plain, plain, asks));
    }
    for (String place : Set.of("{why}", "{until}", "{link}")) {
      Sentence asks = new Sentence(place);
      assertThatIllegalArgumentException()
          .isThrownBy(() -> new Template("t", 1, asks, plain, plain, plain, plain, plain, link));
    }
  }
}
