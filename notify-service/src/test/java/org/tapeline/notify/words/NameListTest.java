package org.tapeline.notify.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Several names")
class NameListTest {

  @Test
  @DisplayName("are joined as an English reader says them")
  void english() {
    assertThat(NameList.and(List.of("Mia"), Language.ENGLISH)).isEqualTo("Mia");
    assertThat(NameList.and(List.of("Mia", "Leo"), Language.ENGLISH)).isEqualTo("Mia and Leo");
    assertThat(NameList.and(List.of("Mia", "Leo", "Ana"), Language.ENGLISH))
        .isEqualTo("Mia, Leo and Ana");
    assertThat(NameList.or(List.of("Hawks", "Bears"), Language.ENGLISH))
        .isEqualTo("Hawks or Bears");
  }

  @Test
  @DisplayName("are joined as a Spanish reader says them, also before the same sound")
  void spanish() {
    assertThat(NameList.and(List.of("Mia", "Leo"), Language.SPANISH)).isEqualTo("Mia y Leo");
    assertThat(NameList.and(List.of("Mia", "Ivo"), Language.SPANISH)).isEqualTo("Mia e Ivo");
    assertThat(NameList.and(List.of("Mia", "Yago"), Language.SPANISH)).isEqualTo("Mia y Yago");
    assertThat(NameList.or(List.of("Mia", "Otto"), Language.SPANISH)).isEqualTo("Mia u Otto");
  }
}
