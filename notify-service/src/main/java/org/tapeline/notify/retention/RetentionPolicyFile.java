package org.tapeline.notify.retention;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.tapeline.journal.EventJson;
import org.tapeline.notify.link.NoticeLinks;

/** Reads {@code retention.json} when the service starts: with a gap it does not start. */
@Singleton
class RetentionPolicyFile {

  @Produces
  @Singleton
  RetentionPolicy policy(NoticeLinks links) {
    return read().outliving(links.validFor());
  }

  static RetentionPolicy read() {
    try (InputStream in = RetentionPolicyFile.class.getResourceAsStream("/retention.json")) {
      return EventJson.MAPPER.readValue(in, RetentionPolicy.class);
    } catch (IOException e) {
      throw new UncheckedIOException("retention.json cannot be read", e);
    }
  }
}
