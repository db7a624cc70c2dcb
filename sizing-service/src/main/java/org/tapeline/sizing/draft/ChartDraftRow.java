package org.tapeline.sizing.draft;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.List;
import java.util.UUID;
import org.tapeline.journal.EventJson;
import org.tapeline.journal.UuidV7;
import org.tapeline.sizing.chart.ChartPublished.Size;
import org.tapeline.sizing.chart.ChartUnit;
import org.tapeline.sizing.chart.ImportedChart;
import org.tapeline.sizing.csv.ImportAnswer.RowError;

/** The newest draft of a model; sizes and warnings as JSON. */
@Entity
@Table(name = "chart_draft")
public class ChartDraftRow extends PanacheEntityBase {
  /** In one statement, so that two imports at a time do not stumble over each other. */
  private static final String REPLACE =
      "insert into chart_draft (model, draft, unit, sizes, warnings) values (?1, ?2, ?3, ?4, ?5)"
          + " on conflict (model) do update set draft = excluded.draft, unit = excluded.unit,"
          + " sizes = excluded.sizes, warnings = excluded.warnings";

  @Id public String model;
  public UUID draft;
  public String unit;
  public String sizes;
  public String warnings;

  static void replace(ImportedChart chart) {
    getEntityManager()
        .createNativeQuery(REPLACE)
        .setParameter(1, chart.model())
        .setParameter(2, UuidV7.next())
        .setParameter(3, chart.unit().code())
        .setParameter(4, json(chart.sizes().stream().map(Size::of).toList()))
        .setParameter(5, json(chart.warnings()))
        .executeUpdate();
  }

  ChartDraft asDraft() {
    return new ChartDraft(
        model,
        draft,
        ChartUnit.of(unit).orElseThrow(),
        read(sizes, new TypeReference<List<Size>>() {}).stream().map(Size::range).toList(),
        read(warnings, new TypeReference<List<RowError>>() {}));
  }

  private static String json(Object value) {
    return EventJson.MAPPER.valueToTree(value).toString();
  }

  private static <T> T read(String json, TypeReference<T> type) {
    try {
      return EventJson.MAPPER.readValue(json, type);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("A kept draft is not readable", e);
    }
  }
}
