package org.tapeline.journal;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/**
 * What a service reads from its peers and what it does with it. A type on a subscribed topic that
 * is neither handled nor ignored is parked: nothing is passed over by accident.
 */
public final class Subscription {

  /** How the events of a topic count. */
  public enum Mode {
    /** Every version of every stream, each exactly once, in order. */
    EVERY_VERSION,
    /** The newest state of each key; an older one that arrives late is passed over. */
    LATEST
  }

  /** What is done with an event, inside the consumer's transaction. */
  @FunctionalInterface
  public interface Handler {
    void on(ReceivedEvent event);
  }

  private final String name;
  private final Map<String, Mode> topics = new LinkedHashMap<>();
  private final Map<String, Handler> handlers = new HashMap<>();
  private final Map<String, Class<? extends Record>> views = new HashMap<>();
  private final Map<String, Consumer<String>> erasers = new HashMap<>();
  private final Map<String, UnaryOperator<JsonNode>> upcasters = new HashMap<>();
  private final Set<String> ignored = new TreeSet<>();
  private Handler first = event -> {};

  private Subscription(String name) {
    this.name = name;
  }

  /**
   * @param name who reads, such as {@code fitting}: the consumer group and the log say it
   */
  public static Subscription named(String name) {
    return new Subscription(name);
  }

  public Subscription events(String topic) {
    topics.put(topic, Mode.EVERY_VERSION);
    return this;
  }

  public Subscription latest(String topic) {
    topics.put(topic, Mode.LATEST);
    return this;
  }

  public <T extends Record> Subscription on(
      String type, Class<T> view, BiConsumer<T, ReceivedEvent> handler) {
    EventTypeName.parse(type);
    if (handlers.put(type, event -> handler.accept(event.as(view), event)) != null) {
      throw new IllegalArgumentException("Handled twice: " + type);
    }
    views.put(type, view);
    return this;
  }

  /**
   * Reads an older version as the one after it: a topic keeps its records for ever.
   *
   * @param type the older type, such as {@code org.tapeline.fitting.signed-off.v1}
   */
  public Subscription upcast(String type, UnaryOperator<JsonNode> toNext) {
    EventTypeName.parse(type);
    upcasters.put(type, toNext);
    return this;
  }

  /**
   * @param type the type without its version, such as {@code org.tapeline.sizing.player-details}
   * @param handler gets the erased key
   */
  public Subscription onErased(String topic, String type, Consumer<String> handler) {
    erasers.put(topic + " " + type, handler);
    return this;
  }

  /** What is done with every event that is handled, in the same transaction, before its handler. */
  public Subscription before(Handler handler) {
    first = handler;
    return this;
  }

  public Subscription ignoring(String... types) {
    for (String type : types) {
      EventTypeName.parse(type);
      ignored.add(type);
    }
    return this;
  }

  public String name() {
    return name;
  }

  public Set<String> topics() {
    return topics.keySet();
  }

  public Mode mode(String topic) {
    return topics.get(topic);
  }

  public boolean knows(String type) {
    return handlers.containsKey(type) || ignored.contains(type) || upcasters.containsKey(type);
  }

  /** The records that this service reads, by event type: what its contract test checks. */
  public Map<String, Class<? extends Record>> views() {
    return Map.copyOf(views);
  }

  /** Does what the subscription says for a known type. */
  public void handle(ReceivedEvent received) {
    ReceivedEvent event = newest(received);
    Handler handler = handlers.get(event.type());
    if (handler != null) {
      first.on(event);
      handler.on(event);
    }
  }

  private ReceivedEvent newest(ReceivedEvent received) {
    ReceivedEvent event = received;
    while (upcasters.containsKey(event.type())) {
      JsonNode data = upcasters.get(event.type()).apply(event.data());
      event = event.as(EventTypeName.parse(event.type()).next().text(), data);
    }
    return event;
  }

  /** Does what the subscription says for an erased key. */
  public void handleErased(ReceivedEvent tombstone) {
    String type = tombstone.type().replaceFirst("\\.v[0-9]+$", "");
    Consumer<String> eraser = erasers.get(tombstone.topic() + " " + type);
    if (eraser != null) {
      eraser.accept(tombstone.key());
    }
  }
}
