package org.tapeline.inventory.policy;

import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.tapeline.journal.EventJson;

/** The policy as it stands in {@code policy/helmets.json}; a wrong one stops the start. */
@ApplicationScoped
public class HelmetPolicyFile {
  private static final ObjectMapper WORDS_IN_ANY_CASE =
      EventJson.MAPPER.rebuild().enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS).build();

  private final HelmetPolicy policy;

  HelmetPolicyFile() {
    try (InputStream file = HelmetPolicyFile.class.getResourceAsStream("/policy/helmets.json")) {
      policy = WORDS_IN_ANY_CASE.readValue(file, HelmetPolicy.class);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public HelmetPolicy get() {
    return policy;
  }
}
