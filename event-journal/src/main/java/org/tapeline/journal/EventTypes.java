package org.tapeline.journal;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;

/**
 * The event types that a service writes: stable names on one side, records on the other, and how an
 * older version is read as the newest.
 */
public final class EventTypes {
  private final String service;
  private final Map<Class<? extends Record>, EventTypeName> names = new HashMap<>();
  private final Map<EventTypeName, Class<? extends Record>> records = new HashMap<>();
  private final Map<EventTypeName, UnaryOperator<JsonNode>> upcasters = new HashMap<>();
  private final Map<EventTypeName, UnaryOperator<JsonNode>> downcasters = new HashMap<>();
  private final Map<EventTypeName, Integer> written = new HashMap<>();

  private EventTypes(String service) {
    this.service = service;
  }

  public static EventTypes of(String service) {
    return new EventTypes(service);
  }

  /** Declares the newest version of an event, the one that is written. */
  public EventTypes with(String event, int version, Class<? extends Record> record) {
    EventTypeName name = new EventTypeName(service, event, version);
    if (names.put(record, name) != null || records.put(name, record) != null) {
      throw new IllegalArgumentException("Declared twice: " + name.text());
    }
    return this;
  }

  /** Declares how the JSON of an older version becomes that of the version after it. */
  public EventTypes upcast(String event, int fromVersion, UnaryOperator<JsonNode> toNext) {
    upcasters.put(new EventTypeName(service, event, fromVersion), toNext);
    return this;
  }

  /**
   * Declares how the JSON of a version becomes that of the version before it, for as long as some
   * reader knows only that one.
   */
  public EventTypes downcast(String event, int fromVersion, UnaryOperator<JsonNode> toPrevious) {
    downcasters.put(new EventTypeName(service, event, fromVersion), toPrevious);
    return this;
  }

  /**
   * Writes an event in an older version from now on; it is read in the newest all the same.
   *
   * @param type such as {@code fitting.signed-off.v1}; one of another service is passed over
   * @throws IllegalArgumentException when there is no such event, or no way to that version
   */
  public EventTypes writing(String type) {
    EventTypeName wanted = EventTypeName.parse("org.tapeline." + type);
    if (!wanted.service().equals(service)) {
      return this;
    }
    EventTypeName newest =
        records.keySet().stream()
            .filter(name -> name.event().equals(wanted.event()))
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException("No event of this service: " + type));
    for (int from = newest.version(); from > wanted.version(); from--) {
      if (!downcasters.containsKey(new EventTypeName(service, wanted.event(), from))) {
        throw new IllegalArgumentException("Cannot be written any more: " + type);
      }
    }
    written.put(newest, wanted.version());
    return this;
  }

  public String service() {
    return service;
  }

  /** The full names of all types that are written. */
  public Set<String> names() {
    Set<String> all = new TreeSet<>();
    names.values().forEach(name -> all.add(name.text()));
    return all;
  }

  /**
   * The full names, older versions among them, of the events that are of a type.
   *
   * @param of a record, or an interface that several have in common
   */
  public Set<String> namesOf(Class<?> of) {
    Set<String> all = new TreeSet<>();
    names.forEach(
        (record, name) -> {
          if (of.isAssignableFrom(record)) {
            for (int version = 1; version <= name.version(); version++) {
              all.add(new EventTypeName(name.service(), name.event(), version).text());
            }
          }
        });
    return all;
  }

  /**
   * @throws IllegalArgumentException when the record was not declared
   */
  public EventTypeName nameOf(Record event) {
    EventTypeName name = names.get(event.getClass());
    if (name == null) {
      throw new IllegalArgumentException("Not a declared event: " + event.getClass().getName());
    }
    return written.containsKey(name)
        ? new EventTypeName(service, name.event(), written.get(name))
        : name;
  }

  /**
   * Reads stored JSON as the newest record of its type.
   *
   * @throws IllegalArgumentException when the type is unknown or the JSON does not fit it
   */
  public Record read(String type, String json) {
    try {
      EventTypeName name = EventTypeName.parse(type);
      JsonNode data = EventJson.MAPPER.readTree(json);
      while (upcasters.containsKey(name)) {
        data = upcasters.get(name).apply(data);
        name = name.next();
      }
      Class<? extends Record> record = records.get(name);
      if (record == null) {
        throw new IllegalArgumentException("Unknown event type: " + type);
      }
      return EventJson.MAPPER.treeToValue(data, record);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("Not readable as " + type + ": " + e.getMessage(), e);
    }
  }

  /**
   * Writes an event as the JSON that is stored and sent.
   *
   * @throws NotText when one of its texts has a character that is none
   */
  public String write(Record event) {
    EventTypeName newest = names.get(event.getClass());
    try {
      if (!written.containsKey(newest)) {
        return NotText.checked(EventJson.MAPPER.writeValueAsString(event));
      }
      JsonNode data = EventJson.MAPPER.valueToTree(event);
      for (int from = newest.version(); from > written.get(newest); from--) {
        data = downcasters.get(new EventTypeName(service, newest.event(), from)).apply(data);
      }
      return NotText.checked(EventJson.MAPPER.writeValueAsString(data));
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("Not writable as JSON: " + nameOf(event).text(), e);
    }
  }
}
