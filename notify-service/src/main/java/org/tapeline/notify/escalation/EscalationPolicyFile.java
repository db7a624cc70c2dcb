package org.tapeline.notify.escalation;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.tapeline.journal.EventJson;
import org.tapeline.notify.notice.EscalationStep;
import org.tapeline.notify.notice.Urgency;

/** Reads {@code escalation.json} when the service starts: with a gap it does not start. */
@Singleton
class EscalationPolicyFile {

  /** What stands in the file, by the code of an urgency. */
  record Content(Map<String, RuleContent> rules, EscalationPolicy.Together together) {}

  record RuleContent(String from, List<StepContent> steps) {
    EscalationPolicy.Rule rule() {
      return new EscalationPolicy.Rule(
          EscalationPolicy.From.valueOf(from.toUpperCase(Locale.ROOT)),
          steps.stream()
              .map(s -> new EscalationPolicy.Timed(EscalationStep.of(s.step()), s.after()))
              .toList());
    }
  }

  record StepContent(String step, Duration after) {}

  @Produces
  @Singleton
  EscalationPolicy policy() {
    return read();
  }

  static EscalationPolicy read() {
    try (InputStream in = EscalationPolicyFile.class.getResourceAsStream("/escalation.json")) {
      Content content = EventJson.MAPPER.readValue(in, Content.class);
      Map<Urgency, EscalationPolicy.Rule> rules = new EnumMap<>(Urgency.class);
      content.rules().forEach((urgency, rule) -> rules.put(Urgency.of(urgency), rule.rule()));
      return new EscalationPolicy(rules, content.together());
    } catch (IOException e) {
      throw new UncheckedIOException("escalation.json cannot be read", e);
    }
  }
}
