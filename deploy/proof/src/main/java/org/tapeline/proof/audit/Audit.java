package org.tapeline.proof.audit;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Lists what of others is in our parts and says what is wrong with it. */
public final class Audit {
  private final Licences licences;
  private final Map<String, ThirdParty> artifacts = new TreeMap<>();
  private final Map<String, Set<String>> parts = new TreeMap<>();
  private final List<String> wrong = new ArrayList<>();

  Audit(Licences licences) {
    this.licences = licences;
  }

  /**
   * Arguments: the file of allowed licences, the address of a database of vulnerabilities or {@code
   * none}, then for each part its name and the file of its list. Ends with 1 when something is
   * wrong.
   */
  public static void main(String[] args) throws IOException {
    if (args.length < 4 || args.length % 2 != 0) {
      System.err.println("Usage: audit LICENCES OSV|none PART LIST [PART LIST ...]");
      System.exit(2);
    }
    Audit audit = new Audit(Licences.from(Path.of(args[0])));
    for (int i = 2; i < args.length; i += 2) {
      audit.take(ThirdParty.of(args[i], Path.of(args[i + 1])));
    }
    audit.table().forEach(System.out::println);
    System.out.println();
    System.out.println(audit.askedFor(args[1]));
    audit.wrong().forEach(System.out::println);
    System.out.printf(
        "%d artifacts of others, %d wrong%n", audit.artifacts.size(), audit.wrong().size());
    System.exit(audit.wrong().isEmpty() ? 0 : 1);
  }

  /** Those of one part. */
  void take(Collection<ThirdParty> part) {
    Map<String, String> versions = new TreeMap<>();
    for (ThirdParty each : part) {
      String other = versions.put(each.artifact(), each.version());
      if (other != null && !other.equals(each.version())) {
        wrong.add(
            each.part() + " has " + each.artifact() + " twice: " + other + ", " + each.version());
      }
      String key = each.artifact() + " " + each.version();
      parts.computeIfAbsent(key, k -> new TreeSet<>()).add(each.part());
      if (artifacts.put(key, each) == null) {
        look(each);
      }
    }
  }

  private void look(ThirdParty each) {
    if (each.version().isEmpty() || each.version().endsWith("-SNAPSHOT")) {
      wrong.add(each.artifact() + " " + each.version() + " is no release.");
    }
    if (!licences.allow(each)) {
      List<String> said = licences.of(each);
      wrong.add(
          each.artifact()
              + (said.isEmpty() ? " says no licence." : " is under " + String.join(" or ", said))
              + " Look it up; what is allowed stands in deploy/licences.txt.");
    }
  }

  List<String> wrong() {
    return List.copyOf(wrong);
  }

  /** A line each: artifact, version, licence, in which parts. */
  List<String> table() {
    List<String> lines = new ArrayList<>(List.of("| artifact | version | licence | in |"));
    lines.add("|---|---|---|---|");
    artifacts.forEach(
        (key, each) ->
            lines.add(
                "| %s | %s | %s | %s |"
                    .formatted(
                        each.artifact(),
                        each.version(),
                        String.join(" or ", licences.of(each)),
                        String.join(", ", parts.get(key)))));
    return lines;
  }

  /** What came of asking for known vulnerabilities, in a sentence. */
  private String askedFor(String server) {
    if (server.equals("none")) {
      return "No database of vulnerabilities was asked (--osv).";
    }
    try {
      List<String> known = new Vulnerabilities(URI.create(server)).of(artifacts.values());
      wrong.addAll(known);
      return "Known vulnerabilities: in " + known.size() + " artifacts.";
    } catch (IOException e) {
      wrong.add("The database of vulnerabilities was not in reach: " + e.getMessage());
      return "No database of vulnerabilities was asked: it is not in reach.";
    }
  }
}
