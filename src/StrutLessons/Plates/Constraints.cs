namespace StrutLessons.Plates;

/// <summary>One part of a tie: <paramref name="Coefficient"/> times the unknown <paramref name="Dof"/>.</summary>
internal readonly record struct TieTerm(int Dof, double Coefficient);

/// <summary>
/// What is known about the degrees of freedom (dof) of a model: held ones, and ones tied linearly to others.
/// Numbering: node·(dofs per node) + direction; the movements of rigid bodies follow after those of the nodes.
/// </summary>
internal sealed class Constraints(int dofsPerNode, int nodes, int bodies)
{
    private readonly TieTerm[]?[] _ties = new TieTerm[dofsPerNode * nodes + bodies][];

    private static readonly TieTerm[] HeldTie = [];

    /// <summary>Unknowns at each node.</summary>
    internal int DofsPerNode { get; } = dofsPerNode;

    /// <summary>Number of nodes.</summary>
    internal int Nodes { get; } = nodes;

    /// <summary>Movements of rigid bodies, at most four; they are kept to the end of the elimination.</summary>
    internal int Bodies { get; } = bodies;

    /// <summary>All degrees of freedom.</summary>
    internal int Count => _ties.Length;

    /// <summary>The dof of a node.</summary>
    internal int Dof(int node, int direction) => node * DofsPerNode + direction;

    /// <summary>The dof of a rigid movement.</summary>
    internal int Body(int movement) => Nodes * DofsPerNode + movement;

    /// <summary>Holds a dof at zero.</summary>
    internal void Hold(int dof) => _ties[dof] = HeldTie;

    /// <summary>Holds all dofs of a node.</summary>
    internal void HoldNode(int node)
    {
        for (int direction = 0; direction < DofsPerNode; direction++)
        {
            Hold(Dof(node, direction));
        }
    }

    /// <summary>Makes a dof the given combination of others, which must be free or already held.</summary>
    internal void Tie(int dof, params ReadOnlySpan<TieTerm> terms)
    {
        var free = new List<TieTerm>(terms.Length);
        foreach (var term in terms)
        {
            if (IsFree(term.Dof))
            {
                free.Add(term);
            }
        }

        _ties[dof] = [.. free];
    }

    /// <summary>True for a dof that is neither held nor tied.</summary>
    internal bool IsFree(int dof) => _ties[dof] is null;

    /// <summary>The terms of a tied dof; none for a held one.</summary>
    internal ReadOnlySpan<TieTerm> Terms(int dof) => _ties[dof];
}
