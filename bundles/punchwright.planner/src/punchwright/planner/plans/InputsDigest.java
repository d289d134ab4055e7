// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.plans;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

import punchwright.engine.planning.PlanRequest;

/**
 * One number for all that a plan was made from: the engine's request, the rates and the order; the same inputs, the same number.
 */
final class InputsDigest {

    private InputsDigest() {
    }

    /** SHA-256, lower-case hex. */
    static String of(PlanRequest request, PlanWriter.Origin origin) {
        StringBuilder text = new StringBuilder(request.toString());
        append(origin.library().getRates(), text);
        append(origin.machine().getRate(), text);
        append(origin.order(), text);
        try {
            byte[] sum = MessageDigest.getInstance("SHA-256").digest(text.toString().getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(sum);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** All attributes of an object and what it contains, in the order of the model. */
    private static void append(EObject object, StringBuilder text) {
        if (object == null) {
            return;
        }
        for (EAttribute attribute : object.eClass().getEAllAttributes()) {
            text.append('|').append(attribute.getName()).append('=').append(object.eGet(attribute));
        }
        object.eContents().forEach(child -> append(child, text));
    }
}
