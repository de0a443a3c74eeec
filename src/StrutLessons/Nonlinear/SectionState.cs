namespace StrutLessons.Nonlinear;

/// <summary>
/// Answer of a section to its four strain measures (e, k1, k2, τ): the conjugate forces and their derivatives.
/// Force 0 is the axial force (tension positive), 1 and 2 are the moments of the stress with −Y and −Z, 3 is the torque.
/// </summary>
internal struct SectionState
{
    internal double S0, S1, S2, S3;
    internal double D00, D01, D02, D03, D11, D12, D13, D22, D23, D33;
}
