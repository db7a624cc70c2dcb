package org.tapeline.inventory.helmet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tapeline.inventory.helmet.TagText.Good;
import org.tapeline.inventory.helmet.TagText.NoTag;
import org.tapeline.inventory.helmet.TagText.Slip;

/** The check character M of A12425GABC1234002 is the published example of ISO 7064 MOD 37,36. */
@DisplayName("A tag as it is typed or scanned")
class TagTextTest {
  private static final String TAG = "A12425GABC1234002M";
  private static final String PREFIX = "0614141";

  @ParameterizedTest
  @DisplayName("is the same tag in every writing")
  @ValueSource(
      strings = {
        "A12425GABC1234002M",
        " a12425gabc1234002m ",
        "A12425-GABC-1234002-M",
        "A12425 GABC 1234002 M",
        "A12425\u2013GABC\u20111234002\u2212M",
        "A12425.GABC_1234002/M",
        "A12425GABC1234002M\r\n",
        "\uFF211\uFF12425GABC1234002M",
        "https://helmets.example/inventory/helmets/A12425GABC1234002M",
        "HTTP://127.0.0.1:8080/INVENTORY/HELMETS/A12425GABC1234002M",
        "https://helmets.example/inventory/helmets/A12425GABC1234002M/",
        "https://helmets.example/inventory/helmets/A12425GABC1234002M?from=label#top",
        "https://helmets.example/inventory/helmets/A12425GABC1234002M/damage",
        "/inventory/helmets/a12425gabc1234002m",
        "]d280040614141A12425GABC1234002M",
        "]Q380040614141A12425GABC1234002M",
        "]C180040614141a12425gabc1234002m",
        "\u001D80040614141A12425GABC1234002M",
        "]d2\u001D80040614141A12425GABC1234002M\u001D",
        "]C121SERIAL1\u001D80040614141A12425GABC1234002M",
        "(8004)0614141A12425GABC1234002M",
        "(8004) 0614141 A12425 GABC1234002M",
        "80040614141A12425GABC1234002M",
      })
  void everyWriting(String typed) {
    assertThat(TagText.read(typed, PREFIX)).isEqualTo(new Good(new AssetTag(TAG)));
  }

  @ParameterizedTest
  @DisplayName("is none when it is something else, with a sentence that says what to do")
  @ValueSource(
      strings = {
        "",
        "   ",
        "x!",
        "AB",
        "https://elsewhere.example/helmets/A12425GABC1234002M",
        "https://helmets.example/inventory/players/A12425GABC1234002M",
        "]d20109501101530003",
        "]C121SERIAL1",
        "(8004)9999999A12425GABC1234002M",
        "(8004)0614141A12425GABC1234002MA12425GABC1234002M",
        "A12425GABC1234002MA12425GABC1234002M",
        "A12425GABC1234002\u00C9M",
        "'; drop table helmet; --",
      })
  void none(String typed) {
    assertThat(TagText.read(typed, PREFIX)).isInstanceOf(NoTag.class);
    assertThat(((NoTag) TagText.read(typed, PREFIX)).sentence()).endsWith(".");
    assertThat(TagText.read(null, PREFIX)).isInstanceOf(NoTag.class);
    assertThat(TagText.read("A".repeat(5000), PREFIX)).isInstanceOf(NoTag.class);
  }

  @Test
  @DisplayName("with a slip is told with the tags that may be meant, also inside of a GS1 code")
  void slip() {
    for (String typed : new String[] {"A12425GABC1234O02M", "]Q380040614141A12425GABC1243002M"}) {
      assertThat(TagText.read(typed, PREFIX))
          .as(typed)
          .isInstanceOfSatisfying(Slip.class, slip -> assertThat(slip.near()).contains(TAG));
    }
  }

  @Test
  @DisplayName("is not taken from a GS1 code while the association has no company prefix")
  void noPrefix() {
    assertThat(TagText.read("(8004)0614141" + TAG, "")).isInstanceOf(NoTag.class);
    assertThat(TagText.read(TAG, "")).isEqualTo(new Good(new AssetTag(TAG)));
  }
}
