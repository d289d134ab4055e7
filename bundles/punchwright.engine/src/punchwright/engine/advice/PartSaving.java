// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

/**
 * What an addition saves on one part of one order.
 *
 * @param order       number of the order
 * @param part        name of the part
 * @param machineNow  machine it is made on today
 * @param machineThen machine it is then made on
 * @param hitsNow     hits a piece today
 * @param hitsThen    hits a piece then
 * @param perYear     saved in a year, currency, without set-ups
 */
public record PartSaving(String order, String part, String machineNow, String machineThen, int hitsNow, int hitsThen,
        double perYear) {
}
