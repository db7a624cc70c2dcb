package org.tapeline.notify.staff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.ZoneId;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.notify.words.Language;

@DisplayName("Staff recipients")
class StaffTest {

  private record Addresses(Map<String, String> phones, Map<String, String> languages)
      implements StaffAddresses {
    @Override
    public String depot() {
      return "depot@larkfield.example.org";
    }

    @Override
    public Map<String, String> depots() {
      return Map.of("MAIN", "main@larkfield.example.org");
    }

    @Override
    public Map<String, String> fitters() {
      return Map.of("NORTH", "north@larkfield.example.org");
    }

    @Override
    public String manager() {
      return "manager@larkfield.example.org";
    }

    @Override
    public String language() {
      return "en";
    }

    @Override
    public ZoneId zone() {
      return ZoneId.of("America/Denver");
    }
  }

  private static Staff with(Map<String, String> phones, Map<String, String> languages) {
    return new Staff(new Addresses(phones, languages));
  }

  @Test
  @DisplayName("are the depots, the fitters of fields with an address, and the manager")
  void recipients() {
    Staff staff = with(Map.of(), Map.of());
    assertThat(staff.depots()).containsExactly("depot", "depot.MAIN");
    assertThat(staff.depot("SOUTH")).isEqualTo("depot");
    assertThat(staff.fitters("NORTH")).contains("fitters.NORTH");
    assertThat(staff.fitters("SOUTH")).isEmpty();
    assertThat(staff.addressOf("depot.MAIN")).contains("main@larkfield.example.org");
    assertThat(staff.addressOf("fitters.NORTH")).contains("north@larkfield.example.org");
    assertThat(staff.addressOf(Staff.MANAGER)).contains("manager@larkfield.example.org");
    assertThat(staff.addressOf("fitters.SOUTH")).isEmpty();
    assertThat(staff.addressOf("coach")).isEmpty();
    assertThat(staff.placeOf("fitters.NORTH")).contains("NORTH");
    assertThat(staff.placeOf("depot")).isEmpty();
  }

  @Test
  @DisplayName("are told in their own language where one is set")
  void language() {
    Staff staff = with(Map.of(), Map.of("depot.MAIN", "es"));
    assertThat(staff.languageOf("depot.MAIN")).isEqualTo(Language.SPANISH);
    assertThat(staff.languageOf("depot")).isEqualTo(Language.ENGLISH);
  }

  @Test
  @DisplayName("have telephone numbers in E.164 where they are set")
  void phones() {
    Staff staff = with(Map.of(Staff.MANAGER, "+15005550100"), Map.of());
    assertThat(staff.phoneOf(Staff.MANAGER)).contains("+15005550100");
    assertThat(staff.phoneOf("depot")).isEmpty();
  }

  @Test
  @DisplayName("are refused at the start with what is no number, no language or nobody")
  void refused() {
    Map<String, String> none = Map.of();
    refuses(Map.of("manager", "500 555 0100"), none, "+15005550100");
    refuses(Map.of("fitters.SOUTH", "+15005550100"), none, "fitters.SOUTH");
    refuses(none, Map.of("manager", "fr"), "manager = fr");
    refuses(none, Map.of("managers", "en"), "managers");
  }

  private static void refuses(
      Map<String, String> phones, Map<String, String> languages, String said) {
    assertThatThrownBy(() -> with(phones, languages))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining(said);
  }
}
