package org.tapeline.proof.fuzz;

import java.io.IOException;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tapeline.proof.fuzz.endpoint.Endpoint;
import org.tapeline.proof.fuzz.endpoint.Known;

/** Asks a running Tapeline for ids and words that mean something to it. */
final class Harvest {
  private static final Pattern BRACES = Pattern.compile("\\{([A-Za-z]+)}");
  private static final Pattern LINK = Pattern.compile("/(?:notify|fitting)/[a-z]+/([\\w.-]{30,})");
  private static final Pattern IDS =
      Pattern.compile("/(guardian|contacts|cases|calls|set-aside)/([0-9a-f-]{36})");
  private static final int MAILS = 12;

  private final Target target;
  private final Known known = new Known();

  Harvest(Target target) {
    this.target = target;
  }

  /** What all readable endpoints say: those without parameters first, then those that need one. */
  Known of(List<Endpoint> endpoints) {
    List<Endpoint> readable =
        endpoints.stream()
            .filter(e -> e.method().equals("GET") && e.kind() == Endpoint.Kind.API)
            .toList();
    for (int round = 0; round < 2; round++) {
      readable.forEach(this::learn);
    }
    learnIds("/fitting/api/protocol", "checks", "check");
    learnIds("/fitting/api/protocol", "remedies", "remedy");
    endpoints.stream()
        .filter(e -> e.method().equals("GET") && e.kind() == Endpoint.Kind.PAGE)
        .filter(e -> !e.path().contains("{"))
        .forEach(e -> learnFromPage(e.path()));
    for (int mail = 1; mail <= MAILS; mail++) {
      learnFromPage("/mailbox/" + mail);
    }
    return known;
  }

  private void learn(Endpoint endpoint) {
    Matcher braces = BRACES.matcher(endpoint.path());
    StringBuilder path = new StringBuilder();
    while (braces.find()) {
      if (!known.knows(braces.group(1))) {
        return;
      }
      braces.appendReplacement(
          path, Matcher.quoteReplacement(known.value(braces.group(1), new Random(1))));
    }
    braces.appendTail(path);
    try {
      known.learn("", target.get(path.toString()));
    } catch (IOException e) {
      // Nothing to learn there; whether that is right is judged later.
    }
  }

  /** Of a list whose members call themselves just {@code id}. */
  private void learnIds(String path, String list, String name) {
    try {
      target.get(path).path(list).forEach(each -> known.learn(name, each.path("id").asText()));
    } catch (IOException e) {
      // As above.
    }
  }

  private void learnFromPage(String path) {
    try {
      String page = target.page(path);
      Matcher link = LINK.matcher(page);
      while (link.find()) {
        known.learn("token", link.group(1));
      }
      Matcher id = IDS.matcher(page);
      while (id.find()) {
        known.learn(name(id.group(1)), id.group(2));
      }
    } catch (IOException e) {
      // As above.
    }
  }

  private static String name(String place) {
    return switch (place) {
      case "contacts" -> "guardian";
      case "cases" -> "refitCase";
      case "calls" -> "help";
      case "set-aside" -> "id";
      default -> place;
    };
  }
}
