package lyewright.records.equipment;

import lyewright.measure.WrittenMass;

/**
 * A jug or a pot of the workshop, with its empty weight.
 *
 * @param id its id
 * @param name what it is called
 * @param emptyWeight what it weighs empty
 * @param use what it is for
 */
public record KeptJug(String id, String name, WrittenMass emptyWeight, JugUse use) {}
