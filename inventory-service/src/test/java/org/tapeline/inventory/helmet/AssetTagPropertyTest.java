package org.tapeline.inventory.helmet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;

/** A tag that was misread is noticed. */
class AssetTagPropertyTest {

  @Property
  void oneWrongCharacterIsNoticed(
      @ForAll @CharRange(from = 'A', to = 'Z') @StringLength(min = 2, max = 12) String body,
      @ForAll @IntRange(min = 0, max = 11) int at,
      @ForAll @CharRange(from = '0', to = '9') char wrong) {
    String tag = AssetTag.withCheck(body).value();
    Assume.that(at < body.length());
    String misread = tag.substring(0, at) + wrong + tag.substring(at + 1);
    assertThatThrownBy(() -> new AssetTag(misread)).isInstanceOf(IllegalArgumentException.class);
  }

  @Property
  void aTagWithItsCheckCharacterIsTaken(
      @ForAll @CharRange(from = '0', to = '9') @StringLength(min = 2, max = 12) String body) {
    assertThat(AssetTag.withCheck(body).value()).startsWith(body).hasSize(body.length() + 1);
  }
}
