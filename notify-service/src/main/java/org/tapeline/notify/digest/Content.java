package org.tapeline.notify.digest;

import java.util.Collection;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import org.tapeline.notify.words.Letter;
import org.tapeline.notify.words.Phrases;

/**
 * What a digest says beside its template's words.
 *
 * @param count the number in its subject
 * @param place the place's name; empty for the equipment manager's
 * @param sections lists; an empty one is left out
 * @param players whom it names
 * @param path the page where the work is done
 */
record Content(
    int count,
    String place,
    List<Letter.Section> sections,
    List<UUID> players,
    String label,
    String path) {

  boolean saysNothing() {
    return sections.isEmpty();
  }

  /** Adds a list of things, said one by one, unless there are none. */
  static <T> void add(
      List<Letter.Section> sections,
      Phrases phrases,
      String heading,
      Collection<T> things,
      Function<T, String> say) {
    phrases.list(heading, things, say).ifPresent(sections::add);
  }
}
