package org.tapeline.sizing.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.sizing.advice.Hair;
import org.tapeline.sizing.chart.ChartUnit;
import org.tapeline.sizing.chart.DemoLikeChart;
import org.tapeline.sizing.chart.SizeChart;
import org.tapeline.sizing.chart.SizeRange;
import org.tapeline.sizing.draft.DraftPreview.PlayerLine;
import org.tapeline.sizing.roster.MeasuredPlayer;
import org.tapeline.sizing.units.Millimetres;

@DisplayName("The preview of a draft")
class DraftPreviewTest {
  /** Youth small to 520, medium 520.5 to 556, large 559 to 590, extra large 590.5 to 620 mm. */
  private static final SizeChart IN_FORCE = DemoLikeChart.modelA();

  @Test
  @DisplayName("lists who would get another size, another second one, or none, and nobody else")
  void affected() {
    List<SizeRange> sizes =
        List.of(
            IN_FORCE.sizes().get(0),
            new SizeRange("youth-medium", new Millimetres(520.5), new Millimetres(549)),
            new SizeRange("youth-large", new Millimetres(550), new Millimetres(590)));
    DraftPreview preview =
        preview(
            Optional.of(IN_FORCE),
            sizes,
            List.of(head("LV-1", 535), head("LV-2", 552), head("LV-3", 547), head("LV-4", 610)));
    assertThat(preview.version()).isEqualTo(1);
    assertThat(preview.measured()).isEqualTo(4);
    assertThat(preview.affected()).isEqualTo(3);
    assertThat(preview.players()).extracting(PlayerLine::number).doesNotContain("LV-1");
    assertThat(preview.players())
        .extracting(line -> line.now().said() + " -> " + line.then().said())
        .containsExactly(
            "Youth medium -> Youth large, bring Youth medium as well",
            "Youth medium -> Youth medium, bring Youth large as well",
            "Youth extra large -> No size (too large)");
  }

  @Test
  @DisplayName("counts everybody who is measured where the model has no chart yet")
  void firstChart() {
    DraftPreview preview =
        preview(Optional.empty(), IN_FORCE.sizes(), List.of(head("LV-1", 535), head("LV-2", 552)));
    assertThat(preview.version()).isZero();
    assertThat(preview.affected()).isEqualTo(2);
    assertThat(preview.players()).allMatch(line -> line.now() == null);
    assertThat(preview.sizes()).allMatch(line -> line.change().equals("New size"));
    assertThat(new DraftView(preview, "").players().getFirst().now()).isEqualTo("No chart yet");
  }

  @Test
  @DisplayName("counts all who are affected, lists 200 of them, and says so")
  void most() {
    List<MeasuredPlayer> players =
        IntStream.range(0, 201).mapToObj(i -> head("LV-" + i, 535)).toList();
    DraftPreview all = preview(Optional.empty(), IN_FORCE.sizes(), players.subList(0, 200));
    assertThat(new DraftView(all, "").more()).isFalse();
    DraftPreview more = preview(Optional.empty(), IN_FORCE.sizes(), players);
    assertThat(more.affected()).isEqualTo(201);
    assertThat(more.players()).hasSize(200);
    assertThat(new DraftView(more, "").more()).isTrue();
  }

  private static DraftPreview preview(
      Optional<SizeChart> inForce, List<SizeRange> sizes, List<MeasuredPlayer> players) {
    ChartDraft draft =
        new ChartDraft("model-a", UUID.randomUUID(), ChartUnit.MILLIMETRE, sizes, List.of());
    return DraftPreview.of(draft, inForce, Map.of(), players);
  }

  private static MeasuredPlayer head(String number, double mm) {
    return new MeasuredPlayer(
        UUID.randomUUID(),
        number,
        "Ada Quillfeather",
        "U10-HAWKS",
        new Millimetres(mm),
        new Millimetres(3),
        Hair.USUAL);
  }
}
