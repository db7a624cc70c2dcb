package org.tapeline.inventory.helmet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.tapeline.inventory.helmet.TagText.Good;

/** However a tag is written, it is read as itself; whatever is read never breaks. */
class TagTextPropertyTest {
  private static final String PREFIX = "0614141";
  private static final String[] BETWEEN = {"", "", "", "-", " ", "\u2013", ".", "_"};

  @Provide
  Arbitrary<String> bodies() {
    return Arbitraries.strings().withCharRange('A', 'Z').numeric().ofMinLength(2).ofMaxLength(22);
  }

  @Property(tries = 300)
  void aTagIsReadAsItselfHoweverItIsWritten(@ForAll("bodies") String body, @ForAll long seed) {
    AssetTag tag = AssetTag.withCheck(body);
    Random random = new Random(seed);
    StringBuilder typed = new StringBuilder();
    for (char c : tag.value().toCharArray()) {
      typed.append(random.nextBoolean() ? c : Character.toLowerCase(c));
      typed.append(BETWEEN[random.nextInt(BETWEEN.length)]);
    }
    assertThat(TagText.read(typed.toString(), "")).isEqualTo(new Good(tag));
  }

  @Property(tries = 300)
  void everyCarrierGivesTheTagBack(@ForAll("bodies") String body) {
    AssetTag tag = AssetTag.withCheck(body);
    for (String carrier :
        new String[] {
          "https://helmets.example/inventory/helmets/",
          "/inventory/helmets/",
          "]d28004" + PREFIX,
          "]Q3\u001D8004" + PREFIX,
          "]C18004" + PREFIX,
          "\u001D8004" + PREFIX,
          "(8004)" + PREFIX
        }) {
      assertThat(TagText.read(carrier + tag, PREFIX)).as(carrier).isEqualTo(new Good(tag));
    }
  }

  @Property(tries = 500)
  void anyTextIsAnswered(@ForAll String typed) {
    assertThat(TagText.read(typed, PREFIX)).isNotNull();
    if (TagText.read(typed, PREFIX) instanceof Good good) {
      assertThat(new AssetTag(good.tag().value())).isEqualTo(good.tag());
    }
  }
}
