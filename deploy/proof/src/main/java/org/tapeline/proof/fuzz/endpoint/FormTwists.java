package org.tapeline.proof.fuzz.endpoint;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.random.RandomGenerator;

/** What can be wrong in a form. */
final class FormTwists {
  private static final Predicate<Endpoint> FITS =
      e -> e.takes("application/x-www-form-urlencoded") || e.takes("multipart/form-data");
  private static final List<String> BROKEN =
      List.of(
          "%",
          "a=%zz", "=&=&&", "a", "a=%FF%FE&b=%C0%80", "\u0000=\u0000", "a=" + "b".repeat(70_000));

  private FormTwists() {}

  static List<Twist> all(Known known) {
    return List.of(
        field("an odd text in a form", Oddities::text),
        field("an odd date in a form", Oddities::date),
        field("another kind in a form", known::other),
        new Twist("a form field missing", FITS, FormTwists::missing),
        new Twist("a form field twice", FITS, FormTwists::twice),
        new Twist("a form with a thousand fields", FITS, FormTwists::many),
        new Twist("a form that is none", FITS, FormTwists::broken),
        new Twist("an empty form", FITS, (d, r) -> d.bytes = new byte[0]));
  }

  private static Twist field(String name, Function<RandomGenerator, String> value) {
    return new Twist(
        name,
        FITS,
        (draft, random) -> {
          if (!draft.form.isEmpty()) {
            int at = random.nextInt(draft.form.size());
            draft.form.set(at, Map.entry(draft.form.get(at).getKey(), value.apply(random)));
          }
        });
  }

  private static void missing(Draft draft, RandomGenerator random) {
    if (!draft.form.isEmpty()) {
      draft.form.remove(random.nextInt(draft.form.size()));
    }
  }

  private static void twice(Draft draft, RandomGenerator random) {
    if (!draft.form.isEmpty()) {
      String name = draft.form.get(random.nextInt(draft.form.size())).getKey();
      draft.form.add(Map.entry(name, Oddities.text(random)));
      draft.form.add(Map.entry("nobody-knows", Oddities.text(random)));
    }
  }

  private static void many(Draft draft, RandomGenerator random) {
    for (int i = 0; i < 1_000; i++) {
      draft.form.add(Map.entry("f" + i, "v"));
    }
  }

  private static void broken(Draft draft, RandomGenerator random) {
    draft.bytes = Oddities.pick(BROKEN, random).getBytes(StandardCharsets.ISO_8859_1);
  }
}
