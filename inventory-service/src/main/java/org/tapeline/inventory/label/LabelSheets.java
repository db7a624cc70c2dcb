package org.tapeline.inventory.label;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.tapeline.journal.EventJson;

/** The sheets that stand in {@code policy/label-sheets.json}; a wrong one stops the start. */
@ApplicationScoped
public class LabelSheets {
  private final List<LabelSheet> sheets;

  /** The file. */
  record OnFile(int version, String source, List<LabelSheet> sheets) {}

  LabelSheets() {
    try (InputStream file = LabelSheets.class.getResourceAsStream("/policy/label-sheets.json")) {
      sheets = List.copyOf(EventJson.MAPPER.readValue(file, OnFile.class).sheets());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    if (sheets.stream().map(LabelSheet::code).distinct().count() != sheets.size()
        || sheets.isEmpty()) {
      throw new IllegalArgumentException("Each sheet of labels has a code of its own");
    }
  }

  public List<LabelSheet> all() {
    return sheets;
  }

  public Optional<LabelSheet> find(String code) {
    return sheets.stream().filter(s -> s.code().equals(code)).findFirst();
  }
}
