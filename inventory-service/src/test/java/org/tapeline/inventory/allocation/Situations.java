package org.tapeline.inventory.allocation;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.tapeline.inventory.allocation.Seeker.Acceptable;
import org.tapeline.inventory.allocation.Seeker.Liking;

/** Associations made up by chance. */
record Situations(int fields, int players, int helmets, int sizes) {
  static final Instant NOW = Instant.parse("2026-08-01T12:00:00Z");

  Situation by(Random random) {
    List<Seeker> seekers = new ArrayList<>();
    for (int i = 0; i < players; i++) {
      seekers.add(seeker(random));
    }
    List<FreeHelmet> free = new ArrayList<>();
    for (int i = 0; i < helmets; i++) {
      String place = random.nextInt(3) == 0 ? "DEPOT" : field(random);
      free.add(new FreeHelmet("T" + i, kind(random), place, random.nextInt(400)));
    }
    Set<String> codes = new TreeSet<>();
    for (int i = 0; i < fields; i++) {
      codes.add("F" + i);
    }
    return new Situation(seekers, free, ways(random), codes, NOW);
  }

  private Seeker seeker(Random random) {
    Map<Kind, Liking> accepts = new LinkedHashMap<>();
    for (Liking liking : Liking.values()) {
      if (accepts.isEmpty() || random.nextInt(3) == 0) {
        accepts.putIfAbsent(kind(random), liking);
      }
    }
    List<Acceptable> list = new ArrayList<>();
    accepts.forEach((kind, liking) -> list.add(new Acceptable(kind, liking)));
    return new Seeker(
        new UUID(random.nextLong(), random.nextLong()),
        field(random),
        random.nextBoolean(),
        NOW.minus(Duration.ofDays(random.nextInt(30))),
        list);
  }

  private Kind kind(Random random) {
    return new Kind("model-" + random.nextInt(2), "size-" + random.nextInt(sizes));
  }

  private String field(Random random) {
    return "F" + random.nextInt(fields);
  }

  private Ways ways(Random random) {
    int places = fields + 1;
    double[] x = random.doubles(places, 0, 200).toArray();
    double[] y = random.doubles(places, 0, 200).toArray();
    Map<String, Map<String, Integer>> minutes = new HashMap<>();
    for (int a = 0; a < places; a++) {
      for (int b = 0; b < places; b++) {
        if (a != b && random.nextInt(10) > 0) {
          minutes
              .computeIfAbsent(name(a), k -> new HashMap<>())
              .put(name(b), (int) Math.hypot(x[a] - x[b], y[a] - y[b]));
        }
      }
    }
    return new Ways(minutes);
  }

  private String name(int place) {
    return place == fields ? "DEPOT" : "F" + place;
  }
}
