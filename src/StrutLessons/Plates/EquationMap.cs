using System.Runtime.InteropServices;

namespace StrutLessons.Plates;

/// <summary>
/// From degrees of freedom to equations: free dofs get a number in an order that keeps the skyline short, rigid movements the
/// last four numbers, tied dofs become combinations of equations, held ones vanish.
/// </summary>
internal sealed class EquationMap
{
    private readonly Constraints _constraints;
    private readonly int[] _equation;
    private readonly int[] _first;

    /// <summary>Numbers the equations.</summary>
    /// <param name="constraints">What is held and tied.</param>
    /// <param name="elements">The nodes of every element, all with the same number of nodes.</param>
    /// <param name="nodesPerElement">Nodes of one element.</param>
    internal EquationMap(Constraints constraints, ReadOnlySpan<int> elements, int nodesPerElement)
    {
        _constraints = constraints;
        _equation = new int[constraints.Count];
        Array.Fill(_equation, -1);
        var groups = Groups(elements, nodesPerElement);
        Kept = Number(groups);
        _first = Skyline(groups);
    }

    /// <summary>Number of the first of the four equations of rigid movements.</summary>
    internal int Kept { get; }

    /// <summary>Equations, padding included.</summary>
    internal int Size => Kept + TiledSkyline.Side;

    /// <summary>Equations that carry a degree of freedom of a node.</summary>
    internal int Unknowns { get; private set; }

    /// <summary>An empty matrix with ones where the numbering was padded.</summary>
    internal TiledSkyline NewMatrix()
    {
        var matrix = new TiledSkyline(_first);
        for (int row = Unknowns; row < Kept; row++)
        {
            matrix.Add(row, row, 1);
        }

        for (int row = Kept + _constraints.Bodies; row < Size; row++)
        {
            matrix.Add(row, row, 1);
        }

        return matrix;
    }

    /// <summary>Writes the equations of the given dofs with their coefficients and returns how many there are.</summary>
    internal int Expand(ReadOnlySpan<int> dofs, Span<ElementEntry> entries)
    {
        int count = 0;
        for (int local = 0; local < dofs.Length; local++)
        {
            int dof = dofs[local];
            if (_constraints.IsFree(dof))
            {
                entries[count++] = new(local, _equation[dof], 1);
                continue;
            }

            foreach (var term in _constraints.Terms(dof))
            {
                entries[count++] = new(local, _equation[term.Dof], term.Coefficient);
            }
        }

        return count;
    }

    /// <summary>Adds an element's matrix (square, row by row).</summary>
    internal void AddElement(TiledSkyline matrix, ReadOnlySpan<int> dofs, ReadOnlySpan<double> element)
    {
        Span<ElementEntry> entries = stackalloc ElementEntry[48];
        entries = entries[..Expand(dofs, entries)];
        foreach (var a in entries)
        {
            foreach (var b in entries)
            {
                if (a.Equation >= b.Equation)
                {
                    matrix.Add(a.Equation, b.Equation, a.Coefficient * b.Coefficient * element[a.Local * dofs.Length + b.Local]);
                }
            }
        }
    }

    /// <summary>Adds a load on one dof to a right-hand side.</summary>
    internal void AddLoad(Span<double> load, int dof, double value)
    {
        Span<ElementEntry> entries = stackalloc ElementEntry[4];
        int count = Expand([dof], entries);
        foreach (var entry in entries[..count])
        {
            load[entry.Equation] += entry.Coefficient * value;
        }
    }

    /// <summary>The displacement of every dof.</summary>
    internal double[] Spread(ReadOnlySpan<double> solution)
    {
        var all = new double[_constraints.Count];
        Span<ElementEntry> entries = stackalloc ElementEntry[4];
        for (int dof = 0; dof < all.Length; dof++)
        {
            int count = Expand([dof], entries);
            foreach (var entry in entries[..count])
            {
                all[dof] += entry.Coefficient * solution[entry.Equation];
            }
        }

        return all;
    }

    /// <summary>For every element the nodes that own its equations (a tied node is represented by those it follows).</summary>
    private List<int[]> Groups(ReadOnlySpan<int> elements, int nodesPerElement)
    {
        var groups = new List<int[]>(elements.Length / nodesPerElement);
        var owners = new List<int>();
        int nodeDofs = _constraints.Nodes * _constraints.DofsPerNode;
        for (int at = 0; at < elements.Length; at += nodesPerElement)
        {
            owners.Clear();
            for (int k = 0; k < nodesPerElement * _constraints.DofsPerNode; k++)
            {
                int dof = _constraints.Dof(elements[at + k / _constraints.DofsPerNode], k % _constraints.DofsPerNode);
                if (_constraints.IsFree(dof))
                {
                    Include(dof / _constraints.DofsPerNode);
                    continue;
                }

                foreach (var term in _constraints.Terms(dof))
                {
                    // A rigid movement has no node; it is numbered last whatever it touches.
                    Include(term.Dof < nodeDofs ? term.Dof / _constraints.DofsPerNode : -1);
                }
            }

            groups.Add([.. owners]);
        }

        return groups;

        void Include(int owner)
        {
            if (!owners.Contains(owner))
            {
                owners.Add(owner);
            }
        }
    }

    private int Number(List<int[]> groups)
    {
        var neighbours = new List<int>[_constraints.Nodes];
        for (int node = 0; node < neighbours.Length; node++)
        {
            neighbours[node] = [];
        }

        foreach (var group in groups)
        {
            foreach (int a in group)
            {
                foreach (int b in group)
                {
                    if (a >= 0 && b >= 0 && a != b && !neighbours[a].Contains(b))
                    {
                        neighbours[a].Add(b);
                    }
                }
            }
        }

        foreach (int node in NodeOrder.ReverseCuthillMcKee(neighbours))
        {
            for (int direction = 0; direction < _constraints.DofsPerNode; direction++)
            {
                int dof = _constraints.Dof(node, direction);
                // A node without neighbours belongs to no element: it is carried by a rigid body or not at all.
                if (_constraints.IsFree(dof) && neighbours[node].Count > 0)
                {
                    _equation[dof] = Unknowns++;
                }
            }
        }

        int kept = (Unknowns + TiledSkyline.Side - 1) / TiledSkyline.Side * TiledSkyline.Side;
        for (int body = 0; body < _constraints.Bodies; body++)
        {
            _equation[_constraints.Body(body)] = kept + body;
        }

        return kept;
    }

    private int[] Skyline(List<int[]> groups)
    {
        var first = new int[Size / TiledSkyline.Side];
        for (int row = 0; row < first.Length; row++)
        {
            first[row] = row;
        }

        foreach (var group in groups)
        {
            int lowest = int.MaxValue;
            foreach (int node in group)
            {
                foreach (int equation in Equations(node))
                {
                    lowest = equation >= 0 ? Math.Min(lowest, equation) : lowest;
                }
            }

            foreach (int node in group)
            {
                foreach (int equation in Equations(node))
                {
                    if (equation >= 0)
                    {
                        ref int reach = ref first[equation / TiledSkyline.Side];
                        reach = Math.Min(reach, lowest / TiledSkyline.Side);
                    }
                }
            }
        }

        return first;
    }

    private ReadOnlySpan<int> Equations(int owner) =>
        owner < 0
            ? _equation.AsSpan(_constraints.Nodes * _constraints.DofsPerNode, _constraints.Bodies)
            : _equation.AsSpan(owner * _constraints.DofsPerNode, _constraints.DofsPerNode);
}

/// <summary>One dof of an element and the equation it enters.</summary>
/// <param name="Local">Position of the dof in the element.</param>
/// <param name="Equation">Number of the equation.</param>
/// <param name="Coefficient">Its part in the dof.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct ElementEntry(int Local, int Equation, double Coefficient);
