package org.tapeline.notify.preview;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.tapeline.notify.notice.NoticeKind;
import org.tapeline.notify.notice.NoticeRow;
import org.tapeline.notify.notice.NoticeTexts;
import org.tapeline.notify.words.Facts;
import org.tapeline.notify.words.Language;
import org.tapeline.notify.words.Letter;
import org.tapeline.notify.words.LetterLayout;
import org.tapeline.notify.words.Phrases;
import org.tapeline.notify.words.Recall;
import org.tapeline.notify.words.SampleFacts;
import org.tapeline.notify.words.Translation;
import org.tapeline.notify.words.Words;

/** Writes letters to be looked at: with sample facts, or with those of a notice that was raised. */
@ApplicationScoped
class Previews {
  private static final int MOST = 20;

  /** As long as a real token, and opens nothing. */
  private static final String NO_TOKEN = "x".repeat(76);

  private final Words words;
  private final LetterLayout layout;
  private final NoticeTexts texts;
  private final String publicUrl;

  Previews(
      Words words,
      LetterLayout layout,
      NoticeTexts texts,
      @ConfigProperty(name = "tapeline.public-url") String publicUrl) {
    this.words = words;
    this.layout = layout;
    this.texts = texts;
    this.publicUrl = publicUrl;
  }

  /** A notice whose facts can be shown. */
  record Raised(UUID notice, Instant raisedAt, String language, String state) {}

  Preview sample(String template, Language language) {
    Phrases phrases = words.phrases(language);
    boolean staff = SampleFacts.forStaff(template);
    Letter.Link link =
        staff
            ? new Letter.Link(phrases.of("link.restock"), publicUrl + "/", false)
            : new Letter.Link(phrases.of("link.guardian"), deadLink(), true);
    return preview(template, language, SampleFacts.of(template, phrases), link);
  }

  /**
   * A notice's facts in the words of a language; the link in it is dead. Empty when its words were
   * erased, or were others than those of today.
   */
  @Transactional
  Optional<Preview> real(UUID notice, String template, Language language) {
    return NoticeRow.<NoticeRow>findByIdOptional(notice)
        .filter(row -> row.template.equals(template))
        .flatMap(row -> texts.letterOf(notice))
        .flatMap(letter -> again(letter, template, language));
  }

  private Optional<Preview> again(Letter letter, String template, Language language) {
    Language was = Language.of(letter.language()).orElseThrow();
    Phrases from = words.phrases(was);
    Phrases to = words.phrases(language);
    return Recall.of(words, was, template, letter)
        .map(
            facts -> {
              Letter.Link link =
                  new Letter.Link(
                      Translation.of(letter.link().label(), from, to),
                      letter.link().personal() ? deadLink() : letter.link().address(),
                      letter.link().personal());
              return preview(template, language, Translation.of(facts, from, to), link);
            });
  }

  private Preview preview(String template, Language language, Facts facts, Letter.Link link) {
    Letter letter = words.write(language, template, facts, link);
    String turnOff = mayBeTurnedOff(template) ? publicUrl + "/notify/unsubscribe/" + NO_TOKEN : "";
    String contact = link.personal() ? publicUrl + "/notify/c/" + NO_TOKEN : "";
    return Preview.of(
        template,
        words.template(language, template).version(),
        language,
        letter,
        layout.html(letter, turnOff, contact),
        layout.plain(letter, turnOff, contact));
  }

  private static boolean mayBeTurnedOff(String template) {
    return Arrays.stream(NoticeKind.values())
        .anyMatch(kind -> kind.mayBeTurnedOff() && template.startsWith(kind.code()));
  }

  private String deadLink() {
    return publicUrl + "/notify/n/" + NO_TOKEN;
  }

  /** The newest notices with these words. */
  @Transactional
  List<Raised> newest(String template) {
    return NoticeRow.<NoticeRow>find("template = ?1 order by raisedAt desc", template)
        .page(0, MOST)
        .list()
        .stream()
        .map(row -> new Raised(row.notice, row.raisedAt, row.language, row.state))
        .toList();
  }
}
