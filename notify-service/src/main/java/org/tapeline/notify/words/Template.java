package org.tapeline.notify.words;

import java.util.List;
import java.util.Objects;

/**
 * The words of one notice in one language, with places in braces for what differs.
 *
 * @param version rises with every change of the words; 1 or more
 * @param happened what happened
 * @param now what to do now
 * @param when when and where
 * @param ask who to ask
 */
public record Template(
    String name,
    int version,
    Sentence subject,
    Sentence headline,
    Sentence happened,
    Sentence now,
    Sentence when,
    Sentence ask) {

  /** Every template there is; each exists in every {@link Language}. */
  public static final List<String> NAMES =
      List.of(
          "do-not-wear-dated",
          "do-not-wear-undated",
          "refit-soon-dated",
          "refit-soon-undated",
          "refit-date",
          "refit-changed",
          "refit-unbooked",
          "fitted-again",
          "restock-request",
          "restock-changed",
          "refit-case");

  public Template {
    Objects.requireNonNull(name, "name");
    if (version < 1) {
      throw new IllegalArgumentException(name + ": a version is 1 or more");
    }
  }

  /** All its sentences, in the order in which they are read. */
  public List<Sentence> sentences() {
    return List.of(subject, headline, happened, now, when, ask);
  }
}
