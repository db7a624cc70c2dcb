package org.tapeline.notify.wish;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.time.ZoneId;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What somebody types about how to be written to")
class WishFormTest {

  @Test
  @DisplayName("may be nothing, and then nothing is wished")
  void nothing() {
    WishForm empty = new WishForm(null, null, "", " ");
    assertThat(empty.wrong()).isEmpty();
    assertThat(empty.wish()).isEqualTo(Wish.NONE);
  }

  @Test
  @DisplayName("names a channel first and leaves none out, quiet hours and a zone")
  void all() {
    WishForm form = new WishForm("text", "21:00", "07:30", "America/Denver");
    assertThat(form.wrong()).isEmpty();
    assertThat(form.wish().channels()).containsExactly("text", "mail");
    assertThat(form.wish().quiet())
        .contains(new Wish.Quiet(LocalTime.of(21, 0), LocalTime.of(7, 30)));
    assertThat(form.wish().zone()).contains(ZoneId.of("America/Denver"));
    assertThat(WishForm.of(form.wish())).isEqualTo(form);
  }

  @Test
  @DisplayName("is told field by field when it is wrong")
  void wrong() {
    assertThat(new WishForm("pigeon", "21:00", "", "Denver").wrong())
        .containsOnlyKeys("first", "quiet", "zone");
    assertThat(new WishForm("", "07:00", "07:00", "").wrong()).containsOnlyKeys("quiet");
    assertThat(new WishForm("", "25:00", "07:00", "America/Nowhere").wrong())
        .containsOnlyKeys("quiet", "zone");
  }
}
