package org.tapeline.sizing.roster;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tapeline.sizing.csv.CsvFile.Row;
import org.tapeline.sizing.csv.ImportAnswer.RowError;
import org.tapeline.sizing.roster.RosterLine.GuardianLine;

@DisplayName("A row of the players' file")
class RosterLineTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 8, 1);
  private final List<RowError> errors = new ArrayList<>();
  private final List<RowError> notes = new ArrayList<>();

  @Test
  @DisplayName("says of a telephone number that is no mobile phone's that texts do not reach it")
  void landLine() {
    RosterLine line =
        read(
            "guardian_phone",
            "(800) 234-5678",
            "guardian2_name",
            "Ben",
            "guardian2_phone",
            "+44 20 7946 0018");
    assertThat(errors).isEmpty();
    assertThat(line.guardians())
        .extracting(GuardianLine::phone)
        .containsExactly("+18002345678", "+442079460018");
    assertThat(notes)
        .extracting(RowError::column)
        .containsExactly("guardian_phone", "guardian2_phone");
    assertThat(notes.getFirst().message()).contains("not a mobile phone");
    assertThat(notes.getFirst().row()).isEqualTo(7);
  }

  @ParameterizedTest(name = "{0}")
  @DisplayName("refuses a name that would end the line of a mail's header")
  @CsvSource({
    "given_name, 'Ada\r\nBcc: x'", "family_name, 'Quill\nfeather'",
    "guardian_name, 'Bea\0'", "guardian2_name, 'Ben\tExample'"
  })
  void unprintable(String column, String name) {
    read(column, name);
    assertThat(errors).extracting(RowError::column).containsExactly(column);
    assertThat(errors.getFirst().message()).contains("cannot be printed");
  }

  @Test
  @DisplayName("gives the player with up to two guardians")
  void good() {
    RosterLine line =
        read(
            "guardian2_name", "Ben Example",
            "guardian2_phone", "+1 500 555 0102",
            "guardian2_language", "es");
    assertThat(errors).isEmpty();
    assertThat(line.number()).isEqualTo("LV-0001");
    assertThat(line.birthDate()).isEqualTo(LocalDate.of(2015, 4, 30));
    assertThat(line.sex()).isEqualTo("f");
    assertThat(line.guardians())
        .containsExactly(
            new GuardianLine("Bea Example", "bea@example.org", "+15005550101", "en"),
            new GuardianLine("Ben Example", null, "+15005550102", "es"));
  }

  @Test
  @DisplayName("may lack sex, guardians, and a guardian's language, which then is English")
  void optional() {
    RosterLine line = read("sex", "", "guardian_language", "");
    assertThat(errors).isEmpty();
    assertThat(line.sex()).isNull();
    assertThat(line.guardians()).extracting(GuardianLine::language).containsExactly("en");
    assertThat(read("guardian_name", "", "guardian_email", "", "guardian_phone", "").guardians())
        .isEmpty();
  }

  @ParameterizedTest(name = "{0} = {1}: {2}")
  @DisplayName("names the row, the column, the value and what to do")
  @CsvSource(
      quoteCharacter = '^',
      value = {
        "player_number, lv 1, capital letters",
        "player_number, ^^, capital letters",
        "given_name, ^^, Needed",
        "family_name, ^^, Needed",
        "birth_date, 30/04/2015, Write the date as",
        "birth_date, 2015-02-30, Write the date as",
        "birth_date, ^^, Write the date as",
        "birth_date, 2026-01-01, Not the birth date",
        "birth_date, 1960-01-01, Not the birth date",
        "sex, girl, f or empty",
        "team, hawks, capital letters",
        "field, ^^, capital letters",
        "guardian_email, bea.example.org, Not an e-mail address",
        "guardian_email, bea@example, Not an e-mail address",
        "guardian_phone, 12, Not a telephone number",
        "guardian_phone, 123-456-7890, Not a telephone number",
        "guardian_language, fr, Either en or es",
        "guardian_name, ^^, needs a name",
        "guardian2_email, ben@example.org, needs a name",
      })
  void bad(String column, String value, String message) {
    read(column, value);
    assertThat(errors).hasSize(1);
    RowError error = errors.getFirst();
    assertThat(error.row()).isEqualTo(7);
    assertThat(error.column()).isEqualTo(column.replace("guardian2_email", "guardian2_name"));
    assertThat(error.message()).contains(message);
  }

  @Test
  @DisplayName("tells everything that is wrong with it at once")
  void several() {
    read("sex", "x", "team", "", "birth_date", "soon");
    assertThat(errors)
        .extracting(RowError::column)
        .containsExactlyInAnyOrder("sex", "team", "birth_date");
  }

  private RosterLine read(String... changes) {
    Map<String, String> values = new HashMap<>();
    values.put("player_number", "LV-0001");
    values.put("given_name", "Ada");
    values.put("family_name", "Example");
    values.put("birth_date", "2015-04-30");
    values.put("sex", "f");
    values.put("team", "U10-HAWKS");
    values.put("field", "NORTH");
    values.put("guardian_name", "Bea Example");
    values.put("guardian_email", "bea@example.org");
    values.put("guardian_phone", "(500) 555-0101");
    values.put("guardian_language", "en");
    for (int i = 0; i < changes.length; i += 2) {
      values.put(changes[i], changes[i + 1]);
    }
    return RosterLine.of(new Row(7, values), TODAY, "US", errors, notes);
  }
}
