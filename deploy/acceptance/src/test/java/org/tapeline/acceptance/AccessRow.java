package org.tapeline.acceptance;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A line of the matrix: an endpoint, and who may use it.
 *
 * @param path as the services describe it; a variable may name the value to try: {@code
 *     {what=charts}}
 * @param about what is own or another's: a name that {@link AccessSubjects} knows, {@code list} for
 *     an answer that holds only own things, {@code -} for none
 * @param sends parameters ({@code ?field={field}}), a body ({@code form}, {@code json}, {@code csv}
 *     or {@code file}), or nothing
 */
record AccessRow(
    String method, String path, String about, Map<AccessRole, Cell> cells, String sends) {

  /** What a role may do with an endpoint. */
  enum Cell {
    NO("–"),
    YES("yes"),
    OWN("own"),
    LINK("by link");

    private final String shown;

    Cell(String shown) {
      this.shown = shown;
    }

    String shown() {
      return shown;
    }
  }

  /** Columns are parted by spaces; what is sent is the rest of the line. */
  static AccessRow of(String line) {
    String[] columns = line.strip().split("\\s+", 3 + AccessRole.values().length + 1);
    if (columns.length < 3 + AccessRole.values().length) {
      throw new IllegalArgumentException("Columns are missing: " + line);
    }
    Map<AccessRole, Cell> cells = new EnumMap<>(AccessRole.class);
    for (AccessRole role : AccessRole.values()) {
      String word = columns[3 + role.ordinal()];
      cells.put(role, Cell.valueOf(word.toUpperCase(java.util.Locale.ROOT)));
    }
    String sends = columns.length > 3 + cells.size() ? columns[3 + cells.size()] : "";
    return new AccessRow(columns[0], columns[1], columns[2], cells, sends);
  }

  /** As the description of the services has it. */
  String endpoint() {
    return method + " " + path.replaceAll("=[^}]*}", "}").replaceAll("/$", "");
  }

  String service() {
    return path.split("/")[1];
  }

  boolean changes() {
    return !method.equals("GET");
  }

  /** Whether there is an own and another's thing to try. */
  boolean scoped() {
    return !about.equals("-") && !about.equals("list");
  }

  String shownCells() {
    return Arrays.stream(AccessRole.values())
        .map(role -> cells.get(role).shown())
        .collect(Collectors.joining(" | "));
  }
}
