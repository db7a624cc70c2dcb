package org.tapeline.journal.rebuild;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Compares a table with its twin and puts right what differs, row by row: what is right is not
 * touched, so that nobody who reads meets an empty table and nothing that refers to a row is lost.
 */
final class TableComparison {
  private static final int MOST_EXAMPLES = 20;

  private final Connection connection;
  private final ReadTable table;
  private final TableShape shape;
  private final String live;
  private final String twin;
  private final String differences;

  TableComparison(Connection connection, String schema, ReadTable table) throws SQLException {
    this.connection = connection;
    this.table = table;
    this.live = schema + "." + table.name();
    this.twin = Shadow.SCHEMA + "." + table.name();
    this.differences = Shadow.SCHEMA + ".differences_of_" + table.name();
    this.shape = TableShape.of(connection, live);
  }

  /** Notes what differs. */
  TableResult compare(String model) throws SQLException {
    Shadow.run(connection, "analyze " + twin);
    Shadow.run(
        connection,
        """
        create unlogged table %1$s as
        select %2$s,
               case when o.%3$s is null then 'missing' when n.%3$s is null then 'extra'
                    else 'changed' end as difference,
               concat_ws(', ', null::text%4$s) as said
        from %5$s o full join %6$s n on %7$s
        where o.%3$s is null or n.%3$s is null or %8$s
        """
            .formatted(
                differences,
                each("coalesce(o.%1$s, n.%1$s) as %1$s", shape.key()),
                first(),
                compared().stream().map(this::nameWhenOther).collect(Collectors.joining()),
                live,
                twin,
                keys("o", "n"),
                anyOther()));
    Map<String, Long> counts = counts();
    long rows = number("select count(*) from " + twin);
    long missing = counts.getOrDefault("missing", 0L);
    long changed = counts.getOrDefault("changed", 0L);
    return new TableResult(
        model,
        table.name(),
        rows,
        rows - missing - changed,
        table.complete() ? missing : 0,
        table.complete() ? counts.getOrDefault("extra", 0L) : 0,
        changed,
        table.complete() ? 0 : missing,
        examples());
  }

  void deleteExtra() throws SQLException {
    if (table.complete()) {
      Shadow.run(
          connection,
          "delete from %s o using %s d where d.difference = 'extra' and %s"
              .formatted(live, differences, keys("o", "d")));
    }
  }

  void changeAndInsert() throws SQLException {
    List<String> written = new ArrayList<>(compared());
    if (!written.isEmpty()) {
      Shadow.run(
          connection,
          "update %s o set %s from %s n, %s d where d.difference = 'changed' and %s and %s"
              .formatted(
                  live,
                  written.stream().map(this::assignment).collect(list()),
                  twin,
                  differences,
                  keys("o", "n"),
                  keys("n", "d")));
    }
    if (table.complete()) {
      List<String> columns =
          shape.all().stream().filter(column -> !shape.numbered().contains(column)).toList();
      // In the order in which they were made: a number that the database gives rises with it.
      Shadow.run(
          connection,
          "insert into %s (%s) select %s from %s n, %s d where d.difference = 'missing' and %s order by n.ctid"
              .formatted(
                  live,
                  each("%1$s", columns),
                  each("n.%1$s", columns),
                  twin,
                  differences,
                  keys("n", "d")));
    }
  }

  private List<String> compared() {
    return shape.all().stream()
        .filter(column -> !shape.key().contains(column) && !table.kept().contains(column))
        .toList();
  }

  private String nameWhenOther(String column) {
    return ", case when o.%s is not null and n.%s is not null and %s then '%s' end"
        .formatted(first(), first(), other(column), column);
  }

  private String anyOther() {
    return Stream.concat(Stream.of("false"), compared().stream().map(this::other))
        .collect(Collectors.joining(" or ", "(", ")"));
  }

  private String other(String column) {
    if (table.whenSet().contains(column)) {
      return "(o.%1$s is null) <> (n.%1$s is null)".formatted(column);
    }
    String cast = shape.json().contains(column) ? "::text" : "";
    return "o.%1$s%2$s is distinct from n.%1$s%2$s".formatted(column, cast);
  }

  private String assignment(String column) {
    return table.whenSet().contains(column)
        ? "%1$s = case when n.%1$s is not null then coalesce(o.%1$s, n.%1$s) end".formatted(column)
        : "%1$s = n.%1$s".formatted(column);
  }

  private String first() {
    return shape.key().getFirst();
  }

  private String keys(String one, String other) {
    return shape.key().stream()
        .map(column -> one + "." + column + " = " + other + "." + column)
        .collect(Collectors.joining(" and "));
  }

  private static String each(String pattern, List<String> columns) {
    return columns.stream().map(pattern::formatted).collect(list());
  }

  private static Collector<CharSequence, ?, String> list() {
    return Collectors.joining(", ");
  }

  private Map<String, Long> counts() throws SQLException {
    Map<String, Long> counts = new HashMap<>();
    try (Statement select = connection.createStatement();
        ResultSet row =
            select.executeQuery(
                "select difference, count(*) from " + differences + " group by difference")) {
      while (row.next()) {
        counts.put(row.getString(1), row.getLong(2));
      }
    }
    return counts;
  }

  private List<String> examples() throws SQLException {
    List<String> examples = new ArrayList<>();
    String key = shape.key().stream().map(c -> c + "::text").collect(list());
    try (PreparedStatement select =
        connection.prepareStatement(
            "select difference, concat_ws(', ', %s), said from %s where ? or difference = 'changed' order by 1, 2 limit %d"
                .formatted(key, differences, MOST_EXAMPLES))) {
      select.setBoolean(1, table.complete());
      try (ResultSet row = select.executeQuery()) {
        while (row.next()) {
          String columns = row.getString(3).isEmpty() ? "" : " (" + row.getString(3) + ")";
          examples.add(row.getString(1) + " " + row.getString(2) + columns);
        }
      }
    }
    return examples;
  }

  private long number(String sql) throws SQLException {
    try (Statement select = connection.createStatement();
        ResultSet row = select.executeQuery(sql)) {
      row.next();
      return row.getLong(1);
    }
  }
}
