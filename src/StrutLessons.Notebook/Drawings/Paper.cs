namespace StrutLessons.Notebook.Drawings;

/// <summary>A point or an arrow on paper, in SVG user units (pixels at full size); y runs down the page.</summary>
internal readonly record struct Paper(double X, double Y)
{
    internal double Length => Math.Sqrt(X * X + Y * Y);

    /// <summary>The same direction with length 1; the zero arrow stays zero.</summary>
    internal Paper Unit => Length > 0 ? 1 / Length * this : this;

    /// <summary>Turned by a right angle, counter-clockwise as seen on the page.</summary>
    internal Paper Left => new(Y, -X);

    internal double Dot(Paper other) => X * other.X + Y * other.Y;

    public static Paper operator +(Paper a, Paper b) => new(a.X + b.X, a.Y + b.Y);

    public static Paper operator -(Paper a, Paper b) => new(a.X - b.X, a.Y - b.Y);

    public static Paper operator *(double factor, Paper a) => new(factor * a.X, factor * a.Y);
}

/// <summary>An upright rectangle on paper.</summary>
internal readonly record struct Box(double Left, double Top, double Right, double Bottom)
{
    internal double Width => Right - Left;

    internal double Height => Bottom - Top;

    internal Paper Centre => new((Left + Right) / 2, (Top + Bottom) / 2);

    internal static Box Around(IEnumerable<Paper> points)
    {
        Paper[] all = [.. points];
        return new(all.Min(p => p.X), all.Min(p => p.Y), all.Max(p => p.X), all.Max(p => p.Y));
    }

    internal Box Grown(double by) => new(Left - by, Top - by, Right + by, Bottom + by);

    internal Box With(Box other) =>
        new(Math.Min(Left, other.Left), Math.Min(Top, other.Top), Math.Max(Right, other.Right), Math.Max(Bottom, other.Bottom));

    internal bool Overlaps(Box other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    internal bool Holds(Box other) => other.Left >= Left && other.Right <= Right && other.Top >= Top && other.Bottom <= Bottom;

    /// <summary>The length of the straight line that lies inside the rectangle.</summary>
    internal double LengthInside(Paper a, Paper b) => Inside(a, b) is var (from, to) ? (to - from).Length : 0;

    /// <summary>The part of the straight line that lies inside the rectangle, null if none (clipping after Liang and Barsky).</summary>
    internal (Paper From, Paper To)? Inside(Paper a, Paper b)
    {
        double from = 0, to = 1;
        Paper d = b - a;
        return Clip(-d.X, a.X - Left, ref from, ref to) && Clip(d.X, Right - a.X, ref from, ref to)
            && Clip(-d.Y, a.Y - Top, ref from, ref to) && Clip(d.Y, Bottom - a.Y, ref from, ref to)
            ? (a + from * d, a + to * d)
            : null;
    }

    private static bool Clip(double slope, double room, ref double from, ref double to)
    {
        if (slope == 0)
        {
            return room >= 0;
        }

        double at = room / slope;
        if (slope < 0)
        {
            from = Math.Max(from, at);
        }
        else
        {
            to = Math.Min(to, at);
        }

        return from < to;
    }
}
