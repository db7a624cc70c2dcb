package org.tapeline.notify.words;

import java.util.Objects;

/**
 * A notice in words, ready to be laid out as a mail or a page.
 *
 * @param language BCP 47 primary tag
 * @param link where to go on reading
 * @param text the short words of a text message, with the link in them
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
    String text) {

  /**
   * @param label what the link is for
   * @param address absolute URL
   * @param personal whether it is signed for this reader and notice alone; otherwise it leads to a
   *     page behind the log-in
   */
  public record Link(String label, String address, boolean personal) {}

  public Letter {
    Objects.requireNonNull(link, "link");
    // Letters that were kept before there were text messages have no words for one.
    text = text == null ? headline + ". " + link.address() : text;
  }
}
