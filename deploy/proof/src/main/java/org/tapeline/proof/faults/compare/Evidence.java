package org.tapeline.proof.faults.compare;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.tapeline.proof.faults.process.Part;
import org.tapeline.proof.faults.process.StackPlace;

/** The journals as they are, and whatever else stands in the databases. */
public final class Evidence {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String ROWS =
      """
      select position, event_id, stream, version, type, recorded_at, correlation_id, causation_id,
             data
        from journal order by position
      """;

  private final StackPlace place;
  private final Map<Part, List<Event>> journals = new EnumMap<>(Part.class);

  private Evidence(StackPlace place) {
    this.place = place;
  }

  /**
   * @throws SQLException when a journal cannot be read
   */
  public static Evidence of(StackPlace place) throws SQLException {
    Evidence evidence = new Evidence(place);
    for (Part service : Part.SERVICES) {
      evidence.journals.put(service, journal(place, service));
    }
    return evidence;
  }

  private static List<Event> journal(StackPlace place, Part service) throws SQLException {
    List<Event> events = new ArrayList<>();
    try (Connection connection = place.database(service);
        Statement select = connection.createStatement();
        ResultSet row = select.executeQuery(ROWS)) {
      while (row.next()) {
        events.add(event(service, row));
      }
    }
    return events;
  }

  private static Event event(Part service, ResultSet row) throws SQLException {
    try {
      String type = row.getString(5);
      String short_ = type.substring(("org.tapeline." + service.code() + ".").length());
      return new Event(
          service,
          row.getLong(1),
          row.getObject(2, UUID.class),
          row.getString(3),
          row.getLong(4),
          short_.substring(0, short_.lastIndexOf(".v")),
          row.getObject(6, OffsetDateTime.class).toInstant(),
          row.getObject(7, UUID.class),
          row.getObject(8, UUID.class),
          JSON.readTree(row.getString(9)));
    } catch (JsonProcessingException e) {
      throw new SQLException("A journal row is no JSON", e);
    }
  }

  public StackPlace place() {
    return place;
  }

  /** Whether nothing was written since: the clock too leads to events, such as a re-check's. */
  boolean isNewest() throws SQLException {
    for (Part service : Part.SERVICES) {
      long last = journals.get(service).stream().mapToLong(Event::position).max().orElse(0);
      String now =
          rows(service, "select coalesce(max(position), 0) as last from journal")
              .getFirst()
              .get("last");
      if (Long.parseLong(now) != last) {
        return false;
      }
    }
    return true;
  }

  /** In the order of positions. */
  List<Event> journal(Part service) {
    return journals.get(service);
  }

  List<Event> of(Part service, String type) {
    return journals.get(service).stream().filter(event -> event.is(type)).toList();
  }

  /** All events of all services. */
  List<Event> all() {
    return journals.values().stream().flatMap(List::stream).toList();
  }

  /** Rows of a query, each column as text; a null is an empty text. */
  List<Map<String, String>> rows(Part service, String sql) throws SQLException {
    List<Map<String, String>> rows = new ArrayList<>();
    try (Connection connection = place.database(service);
        Statement select = connection.createStatement();
        ResultSet row = select.executeQuery(sql)) {
      ResultSetMetaData columns = row.getMetaData();
      while (row.next()) {
        Map<String, String> one = new LinkedHashMap<>();
        for (int i = 1; i <= columns.getColumnCount(); i++) {
          String value = row.getString(i);
          one.put(columns.getColumnLabel(i), value == null ? "" : value);
        }
        rows.add(one);
      }
    }
    return rows;
  }
}
