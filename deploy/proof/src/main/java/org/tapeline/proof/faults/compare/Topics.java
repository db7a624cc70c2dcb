package org.tapeline.proof.faults.compare;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.apache.kafka.clients.consumer.ConsumerRecord;
import org.apache.kafka.common.header.Header;
import org.tapeline.proof.faults.process.Part;
import org.tapeline.proof.faults.process.TopicLog;

/**
 * Every event of a journal has come to its topic, those of a stream in their order. A record that
 * is there again does no harm and is only counted.
 */
final class Topics implements Check {
  private static final String NAME = "topics";

  @Override
  public void look(Evidence evidence, Findings findings) {
    for (Part service : Part.SERVICES) {
      Walk walk = new Walk(service, findings);
      String topic = service.code() + ".events";
      if (!TopicLog.read(evidence.place().broker(), topic, Duration.ofMinutes(2), walk::visit)) {
        findings.differing(NAME, topic + " could not be read to its end");
      }
      for (Event event : evidence.journal(service)) {
        if (!walk.seen.contains(event.stream() + " " + event.version())) {
          findings.lost(NAME, event + " never came to " + topic);
        }
      }
      findings.looked("records on topics", walk.records);
      findings.looked("records on topics, of these again", walk.records - walk.seen.size());
    }
  }

  private static final class Walk {
    private final Part service;
    private final Findings findings;
    private final Set<String> seen = new HashSet<>();
    private final Map<String, Long> newest = new HashMap<>();
    private long records;

    Walk(Part service, Findings findings) {
      this.service = service;
      this.findings = findings;
    }

    void visit(ConsumerRecord<String, byte[]> record) {
      records++;
      String stream = header(record, "ce_subject");
      long version = Long.parseLong(header(record, "ce_streamversion"));
      if (seen.add(stream + " " + version)) {
        long before = newest.getOrDefault(stream, 0L);
        if (version != before + 1) {
          findings.differing(
              NAME, service.code() + " " + stream + ": version " + version + " after " + before);
        }
        newest.merge(stream, version, Math::max);
      }
    }

    private static String header(ConsumerRecord<String, byte[]> record, String name) {
      Header header = record.headers().lastHeader(name);
      return header == null ? "0" : new String(header.value(), StandardCharsets.UTF_8);
    }
  }
}
