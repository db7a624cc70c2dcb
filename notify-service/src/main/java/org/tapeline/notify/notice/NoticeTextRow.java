package org.tapeline.notify.notice;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.UUID;
import org.hibernate.annotations.ColumnTransformer;

/** The words of a notice as they were rendered; the row goes when a person is erased. */
@Entity
@Table(name = "notice_text")
public class NoticeTextRow extends PanacheEntityBase {
  @Id public UUID notice;
  public String subject;

  @Column(columnDefinition = "json")
  @ColumnTransformer(write = "cast(? as json)")
  public String letter;

  public String plain;
  public String html;
  public String calendar;
}
