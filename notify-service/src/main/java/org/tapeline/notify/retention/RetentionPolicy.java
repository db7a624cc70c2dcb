package org.tapeline.notify.retention;

import java.time.Duration;
import java.util.List;

/**
 * How long what is kept ({@code retention.json}). How long is right is the association's to say and
 * local law's; what comes with the service is common practice, no source.
 *
 * @param words rendered words of a notice, after its last change
 * @param tries tries and what the text gateway called messages, after the notice's last change
 * @param causes when and of what type causes were
 * @param contactsOfWhoLeft copies of names and addresses, after a player left the roster
 * @param batch how many rows one transaction deletes at most, 1 to 10,000
 */
public record RetentionPolicy(
    Duration words, Duration tries, Duration causes, Duration contactsOfWhoLeft, int batch) {
  private static final Duration LEAST = Duration.ofDays(1);
  private static final int MOST_AT_ONCE = 10_000;

  public RetentionPolicy {
    for (Duration each : List.of(words, tries, causes, contactsOfWhoLeft)) {
      if (each.compareTo(LEAST) < 0) {
        throw new IllegalArgumentException("Everything is kept for a day at least, not " + each);
      }
    }
    if (batch < 1 || batch > MOST_AT_ONCE) {
      throw new IllegalArgumentException("A batch has 1 to 10,000 rows, not " + batch);
    }
  }

  /**
   * The same, checked against the links that are out.
   *
   * @param linksWorkFor a link must not open a page without words
   * @throws IllegalArgumentException when words would go before links do
   */
  RetentionPolicy outliving(Duration linksWorkFor) {
    if (words.compareTo(linksWorkFor) < 0) {
      throw new IllegalArgumentException(
          "Words are kept for "
              + words
              + ", but links to them work for "
              + linksWorkFor
              + " (tapeline.link.valid-for)");
    }
    return this;
  }
}
