package org.tapeline.proof.audit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The licences that may be in what we ship, from a file: a line is the name of one, or, with an
 * equals sign, an artifact whose own list does not say its licence and the licence that it has.
 */
final class Licences {
  private final Set<String> allowed = new HashSet<>();
  private final Map<String, String> looked = new HashMap<>();

  private Licences() {}

  static Licences from(Path file) throws IOException {
    Licences licences = new Licences();
    for (String raw : Files.readAllLines(file)) {
      String line = raw.replaceFirst("#.*", "").strip();
      int equals = line.indexOf('=');
      if (equals > 0) {
        licences.looked.put(line.substring(0, equals).strip(), line.substring(equals + 1).strip());
      } else if (!line.isEmpty()) {
        licences.allowed.add(line);
      }
    }
    return licences;
  }

  /** What it may be used under, as it says or as somebody looked up. */
  List<String> of(ThirdParty artifact) {
    String known = looked.get(artifact.artifact());
    return known == null ? artifact.licences() : List.of(known);
  }

  boolean allow(ThirdParty artifact) {
    return of(artifact).stream().anyMatch(any -> allowed.containsAll(List.of(any.split(" AND "))));
  }
}
