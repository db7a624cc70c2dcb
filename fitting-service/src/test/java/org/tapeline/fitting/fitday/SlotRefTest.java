package org.tapeline.fitting.fitday;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.UUID;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

@Label("The name of a slot in a form")
class SlotRefTest {

  @Property(tries = 100)
  @Label("is read as it was written")
  void roundTrip(
      @ForAll long a, @ForAll long b, @ForAll @LongRange(min = 0, max = 4_000_000_000L) long s) {
    SlotRef slot = new SlotRef(new UUID(a, b), Instant.ofEpochSecond(s));
    assertThat(SlotRef.parse(slot.text())).contains(slot);
  }

  @Property(tries = 200)
  @Label("is nothing when somebody made it up")
  void madeUp(@ForAll String text) {
    assertThat(SlotRef.parse(text)).isEmpty();
    assertThat(SlotRef.parse(UUID.randomUUID() + "_" + Long.MAX_VALUE)).isEmpty();
    assertThat(SlotRef.parse(UUID.randomUUID() + "_")).isEmpty();
    assertThat(SlotRef.parse(null)).isEmpty();
  }
}
