package org.tapeline.notify.channel;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tapeline.notify.notice.Urgency;

/**
 * The association's choice of channels, one rule for each urgency ({@code channels.json}).
 *
 * @param rules by urgency; every one has a rule
 */
public record ChannelPolicy(Map<Urgency, Rule> rules) {
  /** Every channel that a policy can name. */
  public static final Set<String> CHANNELS = Set.of("mail", "text");

  /**
   * @param order channels, most wanted first; at least one, none twice
   * @param moveOnAfter how long one channel may fail before the next is tried, where there is a
   *     next; positive
   */
  public record Rule(List<String> order, Duration moveOnAfter) {
    public Rule {
      order = List.copyOf(order);
      if (order.isEmpty()
          || !CHANNELS.containsAll(order)
          || Set.copyOf(order).size() < order.size()) {
        throw new IllegalArgumentException("An order names each of " + CHANNELS + " at most once");
      }
      if (!moveOnAfter.isPositive()) {
        throw new IllegalArgumentException("moveOnAfter is longer than nothing");
      }
    }
  }

  public ChannelPolicy {
    rules = Map.copyOf(rules);
    if (!rules.keySet().equals(Set.of(Urgency.values()))) {
      throw new IllegalArgumentException("Every urgency needs a rule for its channels");
    }
  }

  public Rule of(Urgency urgency) {
    return rules.get(urgency);
  }
}
