package orlop.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import orlop.drawing.Drawing;
import orlop.drawing.Words;
import orlop.findings.Finding;
import orlop.network.Reaches.FedFrom;
import orlop.study.CableResult;
import orlop.study.ComponentResult;
import orlop.study.Copper;
import orlop.study.FaultKind;
import orlop.study.FaultRange;
import orlop.study.FaultResult;
import orlop.study.IslandResult;
import orlop.study.PhaseResult;
import orlop.study.PointResult;
import orlop.study.Results;
import orlop.study.Study;
import orlop.study.TerminalResult;
import orlop.study.Topology;

/** The results of one condition as JSON: the contract that other programs rely on. Keys never change their meaning. */
final class StudyJson {
    private final JsonGenerator json;

    StudyJson(JsonGenerator json) {
        this.json = json;
    }

    void write(Study study, Results r, List<Finding> findings) throws IOException {
        Drawing drawing = study.drawing();
        Topology topology = Topology.of(study, r.condition());
        json.writeStartObject();
        json.writeStringField("drawing", drawing.vessel().name());
        json.writeStringField("condition", r.condition());
        json.writeStringField("ruleSet", drawing.vessel().ruleSet());
        json.writeBooleanField("converged", r.converged());
        JsonValues.number(json, "residualA", r.residualA());
        copper(study.copper());
        json.writeArrayFieldStart("islands");
        for (IslandResult i : topology.islands()) {
            island(i);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("points");
        for (PointResult p : r.points().values()) {
            point(p, topology);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("cables");
        for (CableResult w : r.cables().values()) {
            cable(w, topology);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("components");
        for (ComponentResult c : r.components().values()) {
            component(c, topology);
        }
        json.writeEndArray();
        json.writeFieldName("findings");
        new FindingsJson(json, Words.english()).write(findings);
        json.writeEndObject();
    }

    private void copper(Copper c) throws IOException {
        json.writeObjectFieldStart("copper");
        JsonValues.number(json, "chosenKg", c.chosenKg());
        JsonValues.number(json, "stepwiseKg", c.stepwiseKg());
        JsonValues.number(json, "leastKg", c.leastKg());
        json.writeEndObject();
    }

    private void point(PointResult p, Topology topology) throws IOException {
        json.writeStartObject();
        json.writeStringField("id", p.id());
        json.writeStringField("system", p.system());
        JsonValues.number(json, "voltageV", p.voltageV());
        JsonValues.number(json, "angleDeg", p.angleDeg());
        JsonValues.number(json, "faultMaxA", p.fault().maxA());
        JsonValues.number(json, "faultMinA", p.fault().minA());
        json.writeObjectFieldStart("faults");
        for (Map.Entry<FaultKind, FaultResult> e : p.faults().entrySet()) {
            json.writeObjectFieldStart(e.getKey().word());
            JsonValues.number(json, "maxA", e.getValue().maxA());
            JsonValues.number(json, "minA", e.getValue().minA());
            JsonValues.number(json, "peakA", e.getValue().peakA());
            JsonValues.number(json, "sustainedA", e.getValue().sustainedA());
            json.writeEndObject();
        }
        json.writeEndObject();
        phases(p.phases(), true, false, false);
        fedFrom(topology.fedFromPoint(p.id()));
        json.writeEndObject();
    }

    /** Where phases differ, an object for each conductor: the plain figures are those of the worst. */
    private void phases(Map<String, PhaseResult> phases, boolean voltage, boolean current, boolean drop)
            throws IOException {
        for (Map.Entry<String, PhaseResult> e : phases.entrySet()) {
            json.writeObjectFieldStart(e.getKey());
            if (voltage) {
                JsonValues.number(json, "voltageV", e.getValue().voltageV());
                JsonValues.number(json, "angleDeg", e.getValue().angleDeg());
            }
            if (current) {
                JsonValues.number(json, "currentA", e.getValue().currentA());
            }
            if (drop) {
                JsonValues.number(json, "dropV", e.getValue().dropV());
            }
            json.writeEndObject();
        }
    }

    private void cable(CableResult w, Topology topology) throws IOException {
        json.writeStartObject();
        json.writeStringField("id", w.id());
        json.writeStringField("from", w.from().toString());
        json.writeStringField("to", w.to().toString());
        JsonValues.number(json, "lengthM", w.lengthM());
        JsonValues.number(json, "areaMm2", w.areaMm2());
        json.writeBooleanField("auto", w.auto());
        JsonValues.number(json, "leastAreaMm2", w.leastAreaMm2());
        JsonValues.text(json, "governedBy", w.governedBy() == null ? null : JsonValues.word(w.governedBy()));
        JsonValues.text(json, "governingCondition", w.governingCondition());
        json.writeBooleanField("governedFromMemory", w.sizing().fromMemory());
        JsonValues.number(json, "leastCopperAreaMm2", w.sizing().leastCopperAreaMm2());
        JsonValues.number(json, "currentA", w.currentA());
        JsonValues.number(json, "designCurrentA", w.designCurrentA());
        JsonValues.number(json, "ampacityA", w.ampacityA());
        JsonValues.number(json, "conductorC", w.conductorC());
        JsonValues.number(json, "dropV", w.dropV());
        JsonValues.number(json, "dropPercent", w.dropPercent());
        JsonValues.number(json, "dropFromSourcePercent", w.dropFromSourcePercent());
        JsonValues.number(json, "lengthFromSourceM", w.lengthFromSourceM());
        JsonValues.number(json, "lossW", w.lossW());
        json.writeFieldName("faultFrom");
        range(w.faultFrom());
        json.writeFieldName("faultTo");
        range(w.faultTo());
        texts("protectedBy", w.protectedBy());
        Integer count = topology.dependentCount(w.id());
        JsonValues.number(json, "dependentCount", count == null ? null : (Double) count.doubleValue());
        texts("dependents", topology.dependents(w.id()));
        phases(w.phases(), false, true, true);
        json.writeEndObject();
    }

    private void component(ComponentResult c, Topology topology) throws IOException {
        json.writeStartObject();
        json.writeStringField("id", c.id());
        json.writeStringField("kind", c.kind().word());
        json.writeArrayFieldStart("terminals");
        for (TerminalResult t : c.terminals()) {
            json.writeStartObject();
            json.writeStringField("id", t.id());
            json.writeStringField("system", t.system());
            JsonValues.number(json, "voltageV", t.voltageV());
            JsonValues.number(json, "angleDeg", t.angleDeg());
            JsonValues.number(json, "currentA", t.currentA());
            JsonValues.number(json, "powerW", t.powerW());
            phases(t.phases(), true, true, false);
            json.writeEndObject();
        }
        json.writeEndArray();
        fedFrom(topology.fedFromComponent(c.id()));
        json.writeEndObject();
    }

    private void island(IslandResult i) throws IOException {
        json.writeStartObject();
        json.writeStringField("id", i.id());
        json.writeStringField("system", i.system());
        json.writeNumberField("points", i.pointCount());
        texts("sources", i.sources());
        json.writeNumberField("loopCount", i.loopCount());
        json.writeArrayFieldStart("loops");
        for (List<String> loop : i.loops()) {
            json.writeStartArray();
            for (String tag : loop) {
                json.writeString(tag);
            }
            json.writeEndArray();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void fedFrom(List<FedFrom> sources) throws IOException {
        json.writeArrayFieldStart("fedFrom");
        for (FedFrom f : sources) {
            json.writeStartObject();
            json.writeStringField("source", f.source());
            JsonValues.number(json, "lengthM", f.lengthM());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void texts(String field, List<String> values) throws IOException {
        json.writeArrayFieldStart(field);
        for (String value : values) {
            json.writeString(value);
        }
        json.writeEndArray();
    }

    private void range(FaultRange f) throws IOException {
        json.writeStartObject();
        JsonValues.number(json, "maxA", f.maxA());
        JsonValues.number(json, "minA", f.minA());
        json.writeEndObject();
    }
}
