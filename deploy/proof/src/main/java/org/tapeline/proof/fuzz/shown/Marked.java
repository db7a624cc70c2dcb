package org.tapeline.proof.fuzz.shown;

import java.util.List;

/**
 * Texts that would become part of a page, a table or a mail if they were not kept apart from it.
 */
public final class Marked {
  /** An element, an attribute or a header of this name is one of ours that got through. */
  static final String NAME = "x-marked";

  /** What the file tables must defuse begins so. */
  public static final List<String> FORMULAS =
      List.of("=1+1", "+1+1", "-1+1", "@SUM(1)", "\t=1+1", "\r=1+1");

  /** What pages and printed sheets must escape. */
  public static final List<String> MARKUP =
      List.of(
          "<x-marked>",
          "\"><x-marked>",
          "'><x-marked>",
          "\" x-marked=\"1",
          "' x-marked='1",
          "</title></script></style></textarea><x-marked>",
          "<!--><x-marked>",
          "&lt;x-marked&gt;<x-marked/>",
          "]]><x-marked>");

  /** What mails must not take for an end of a line. */
  public static final List<String> LINES =
      List.of("a\r\nX-Marked: 1", "a\nX-Marked: 1", "a\rX-Marked: 1", "a\u2028X-Marked: 1");

  private Marked() {}
}
