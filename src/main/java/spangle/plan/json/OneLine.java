package spangle.plan.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;
import spangle.equipment.Span;
import spangle.fit.hang.CarrierFace;
import spangle.fit.hang.HangItem;
import spangle.fit.hang.HangPattern;
import spangle.plan.Chain;
import spangle.plan.Dwell;
import spangle.plan.Finding;
import spangle.plan.Finish;
import spangle.plan.Kit;
import spangle.plan.LeftOut;
import spangle.plan.PlannedLoad;
import spangle.plan.Setting;
import spangle.plan.SetupTable;
import spangle.plan.Supply;
import spangle.plan.Visit;
import spangle.plan.bound.LineBounds;

/** Small records stand on one line each, so that a person can read and compare the file. */
final class OneLine extends SimpleModule {
  private static final long serialVersionUID = 1L;

  OneLine(JsonMapper compact) {
    super("one-line");
    for (Class<?> small :
        new Class<?>[] {
          CarrierFace.class,
          Chain.class,
          Dwell.class,
          Finding.class,
          Finish.class,
          Gate.class,
          HangItem.class,
          HangPattern.HungPiece.class,
          InputDigest.class,
          Kit.KitLine.class,
          LeftOut.class,
          LineBounds.GroupBounds.class,
          LineBounds.KindBounds.class,
          PlannedLoad.PlannedVisit.class,
          Setting.class,
          SetupTable.class,
          Span.class,
          Supply.Arrival.class,
          Visit.class
        }) {
      add(small, compact);
    }
  }

  private <T> void add(Class<T> small, JsonMapper compact) {
    addSerializer(small, new Line<>(small, compact));
  }

  private static final class Line<T> extends StdSerializer<T> {
    private static final long serialVersionUID = 1L;
    private final transient JsonMapper compact;

    Line(Class<T> small, JsonMapper compact) {
      super(small);
      this.compact = compact;
    }

    @Override
    public void serialize(T value, JsonGenerator json, SerializerProvider provider)
        throws IOException {
      json.writeRawValue(compact.writeValueAsString(value));
    }
  }
}
