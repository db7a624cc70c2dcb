package org.tapeline.notify.words;

import java.util.List;
import java.util.Objects;

/**
 * A notice in words, ready to be laid out as a mail or a page.
 *
 * @param language BCP 47 primary tag
 * @param link where to go on reading
 * @param text the short words of a text message, with the link in them
 * @param sections lists that staff get, in the order in which they are read
 */
public record Letter(
    String language,
    String subject,
    String headline,
    String happened,
    String now,
    String when,
    String ask,
    Link link,
    String text,
    List<Section> sections) {

  /**
   * @param label what the link is for
   * @param address absolute URL
   * @param personal whether it is signed for this reader and notice alone; otherwise it leads to a
   *     page behind the log-in
   */
  public record Link(String label, String address, boolean personal) {}

  /**
   * A list with its heading.
   *
   * @param lines one or more
   */
  public record Section(String heading, List<String> lines) {
    public Section {
      lines = List.copyOf(lines);
    }
  }

  public Letter {
    Objects.requireNonNull(link, "link");
    sections = sections == null ? List.of() : List.copyOf(sections);
    // Letters that were kept before there were text messages have no words for one.
    text = text == null ? headline + ". " + link.address() : text;
  }

  /** A letter without lists. */
  public Letter(
      String language,
      String subject,
      String headline,
      String happened,
      String now,
      String when,
      String ask,
      Link link,
      String text) {
    this(language, subject, headline, happened, now, when, ask, link, text, List.of());
  }

  public Letter with(List<Section> lists) {
    return new Letter(language, subject, headline, happened, now, when, ask, link, text, lists);
  }
}
