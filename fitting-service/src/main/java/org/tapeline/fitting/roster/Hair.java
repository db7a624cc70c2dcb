package org.tapeline.fitting.roster;

import java.util.List;

/** How hair is, as far as it matters for a helmet. */
public final class Hair {
  private static final List<String> KINDS = List.of("usual", "short", "long", "braids");

  /** What to enter, for whoever entered something else. */
  public static final String ONE_OF = "One of " + String.join(", ", KINDS) + ".";

  private Hair() {}

  public static boolean isKind(String code) {
    return code != null && KINDS.contains(code);
  }
}
