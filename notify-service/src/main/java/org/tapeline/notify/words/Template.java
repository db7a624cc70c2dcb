package org.tapeline.notify.words;

import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * The words of one notice in one language, with places in braces for what differs.
 *
 * @param version rises with every change of the words; 1 or more
 * @param happened what happened
 * @param now what to do now
 * @param when when and where
 * @param ask who to ask
 * @param text the whole of it in a text message, which names only {@link #IN_A_TEXT} and always the
 *     link: a phone shows it to whoever looks, so it never says why
 */
public record Template(
    String name,
    int version,
    Sentence subject,
    Sentence headline,
    Sentence happened,
    Sentence now,
    Sentence when,
    Sentence ask,
    Sentence text) {

  /** The facts that a text message may hold: of a child, the first name at most. */
  public static final Set<String> IN_A_TEXT =
      Set.of("player", "date", "time", "place", "item", "quantity", "to", "link");

  /** The facts that a subject may not hold: it shows on a lock screen too, and may say why. */
  public static final Set<String> NOT_IN_A_SUBJECT = Set.of("why", "until", "link");

  /** Every template there is; each exists in every {@link Language}. */
  public static final List<String> NAMES =
      List.of(
          "do-not-wear-dated",
          "do-not-wear-undated",
          "refit-soon-dated",
          "refit-soon-undated",
          "refit-date",
          "refit-changed",
          "refit-chosen",
          "refit-unbooked",
          "fitted-again",
          "do-not-wear-household",
          "refit-soon-household",
          "recheck-due",
          "sign-off-lapsed",
          "restock-request",
          "restock-changed",
          "restock-several",
          "refit-case",
          "help-asked",
          "not-reached",
          "depot-day",
          "field-day",
          "manager-day");

  public Template {
    Objects.requireNonNull(name, "name");
    if (version < 1) {
      throw new IllegalArgumentException(name + ": a version is 1 or more");
    }
    if (subject.places().stream().anyMatch(NOT_IN_A_SUBJECT::contains)) {
      throw new IllegalArgumentException(
          name + ": a subject has none of the places " + NOT_IN_A_SUBJECT);
    }
    if (!IN_A_TEXT.containsAll(text.places()) || !text.places().contains("link")) {
      throw new IllegalArgumentException(
          name + ": a text message has the link, and no places but " + IN_A_TEXT);
    }
  }

  /** All its sentences, in the order in which they are read. */
  public List<Sentence> sentences() {
    return List.of(subject, headline, happened, now, when, ask, text);
  }
}
